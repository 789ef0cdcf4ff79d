//! Ways to use the crate, each with code that runs in the tests: [in a controller without `std`](controller), [in
//! continuous integration](continuous_integration) and, with the feature `report`, in a web backend.

pub mod continuous_integration {
    #![doc = include_str!("continuous_integration.md")]
}

pub mod controller {
    #![doc = include_str!("controller.md")]
}

#[cfg(feature = "report")]
#[cfg_attr(docsrs, doc(cfg(feature = "report")))]
pub mod web_backend {
    #![doc = include_str!("web_backend.md")]
}
