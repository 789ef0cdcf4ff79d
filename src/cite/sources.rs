// Made from references/ by references/pipeline. Do not edit: change the reference file.

use super::Source;

pub(crate) static CFR9_424_21_2015: Source = Source {
    key: "cfr9-424-21-2015",
    title: "Use of food ingredients and sources of radiation",
    publisher: "US Code of Federal Regulations (FSIS, USDA)",
    number: "9 CFR 424.21",
    edition: "2015 annual edition",
};

pub(crate) static CFR9_424_22_2015: Source = Source {
    key: "cfr9-424-22-2015",
    title: "Certain other permitted uses",
    publisher: "US Code of Federal Regulations (FSIS, USDA)",
    number: "9 CFR 424.22",
    edition: "2015 annual edition",
};

pub(crate) static CIAAW_2021: Source = Source {
    key: "ciaaw-2021",
    title: "Standard atomic weights of the elements 2021 (IUPAC Technical Report)",
    publisher: "IUPAC CIAAW",
    number: "Pure Appl. Chem. 2022",
    edition: "2021",
};

pub(crate) static FDA_HAZ_2020: Source = Source {
    key: "fda-haz-2020",
    title: "Fish and Fishery Products Hazards and Controls Guidance",
    publisher: "US FDA, Center for Food Safety and Applied Nutrition",
    number: "SGR 129, 4th edition",
    edition: "4th edition, version dated March 2020 (the current version is dated June 2022)",
};

pub(crate) static FOODSAFETY_CHART_2023: Source = Source {
    key: "foodsafety-chart-2023",
    title: "Cold Food Storage Chart",
    publisher: "FoodSafety.gov (US HHS with USDA, FDA, CDC)",
    number: "",
    edition: "page reviewed 2023-09-19",
};

pub(crate) static FOODSAFETY_CHART_C2010: Source = Source {
    key: "foodsafety-chart-c2010",
    title: "Storage Times for the Refrigerator and Freezer",
    publisher: "FoodSafety.gov",
    number: "",
    edition: "undated, superseded (about 2010 to 2016)",
};

pub(crate) static FOODSAFETY_CHART_C2019: Source = Source {
    key: "foodsafety-chart-c2019",
    title: "Cold Food Storage Chart (earlier print of the same page)",
    publisher: "FoodSafety.gov",
    number: "",
    edition: "undated, superseded; print copies circulating before about 2021",
};

pub(crate) static FSIS_7620_3: Source = Source {
    key: "fsis-7620-3",
    title: "Processing Inspectors' Calculations Handbook",
    publisher: "USDA FSIS",
    number: "FSIS Directive 7620.3",
    edition: "Revised 1995",
};

pub(crate) static FSIS_COLD_STORAGE_OLD: Source = Source {
    key: "fsis-cold-storage-old",
    title: "Basics: cold storage chart, meat rows (older FSIS consumer chart)",
    publisher: "USDA FSIS",
    number: "",
    edition: "undated, superseded",
};

pub(crate) static FSIS2021: Source = Source {
    key: "fsis2021",
    title: "FSIS Cooking Guideline for Meat and Poultry Products (Revised Appendix A)",
    publisher: "USDA Food Safety and Inspection Service",
    number: "FSIS-GD-2021-14",
    edition: "December 14, 2021 (final)",
};

pub(crate) static FSISCHART: Source = Source {
    key: "fsischart",
    title: "Safe Minimum Internal Temperature Chart",
    publisher: "USDA FSIS",
    number: "",
    edition: "last updated Apr 14, 2025",
};

pub(crate) static LEAFLET_2006: Source = Source {
    key: "leaflet-2006",
    title: "Cold Food Storage Guidelines (one-page leaflet, code PG 8/06, refers to fsis.usda.gov)",
    publisher: "US food-safety partnership leaflet",
    number: "",
    edition: "2006-08",
};

pub(crate) static ME_359: Source = Source {
    key: "me-359",
    title: "Rules governing the processing, handling, storing and labeling of smoked, cured and salted fish",
    publisher: "Maine Dept. of Agriculture, Conservation and Forestry",
    number: "01-001 C.M.R. ch. 359 ss. 1-3",
    edition: "current through 2024 registers",
};

pub(crate) static ON_FPG: Source = Source {
    key: "on-fpg",
    title: "Fish plant guidelines, F.B.14.15 Smoking",
    publisher: "Ontario Ministry of Agriculture, Food and Rural Affairs",
    number: "F.B.14.15",
    edition: "copy read undated",
};

pub(crate) static RU_TEXT: Source = Source {
    key: "ru-text",
    title: "Teaching text on fish smoking rules",
    publisher: "not named",
    number: "",
    edition: "",
};

pub(crate) static TRADE_PRACTICE: Source = Source {
    key: "trade-practice",
    title: "Common practice of the trade",
    publisher: "no publisher",
    number: "",
    edition: "",
};

pub(crate) static CA_PRESERV_LIST_COPY: Source = Source {
    key: "ca-preserv-list-copy",
    title: "List of Permitted Preservatives, Part 1 Class 1",
    publisher: "Health Canada",
    number: "List 11",
    edition: "undated, before December 2024",
};

pub(crate) static CFIA_MHMP_4_13: Source = Source {
    key: "cfia-mhmp-4.13",
    title: "Archived Meat Hygiene Manual of Procedures, Chapter 4, section 4.13 Preservation",
    publisher: "Canadian Food Inspection Agency",
    number: "Chapter 4, 4.13.1-4.13.3",
    edition: "archived 2019",
};

pub(crate) static CODEX_CXS88_OLD: Source = Source {
    key: "codex-cxs88-old",
    title: "Codex Standard for Corned Beef, CODEX STAN 88-1981 (older revision)",
    publisher: "Codex Alimentarius Commission",
    number: "CODEX STAN 88-1981",
    edition: "Rev. 1 (1991)",
};

pub(crate) static CODEX_GSFA_0162: Source = Source {
    key: "codex-gsfa-0162",
    title: "GSFA online, food category 01.6.2 Ripened cheese",
    publisher: "FAO/WHO Codex",
    number: "CXS 192-1995",
    edition: "undated",
};

pub(crate) static CODEX_GSFA_249: Source = Source {
    key: "codex-gsfa-249",
    title: "GSFA online, provisions for potassium nitrite (INS 249) / nitrites",
    publisher: "Codex Alimentarius Commission",
    number: "CXS 192-1995",
    edition: "undated",
};

pub(crate) static DK_CONSULT_2025: Source = Source {
    key: "dk-consult-2025",
    title: "Nye EU-grænseværdier for nitrit i kødprodukter",
    publisher: "A Danish food-law consultancy",
    number: "",
    edition: "2025",
};

pub(crate) static EU_1333_2008_CONS_20260818: Source = Source {
    key: "eu-1333-2008-cons-20260818",
    title: "Regulation (EC) No 1333/2008 on food additives, consolidated text, without legal effect of its own",
    publisher: "European Union, EUR-Lex",
    number: "CELEX 02008R1333-20260818",
    edition: "18 August 2026",
};

pub(crate) static FSANZ_S15: Source = Source {
    key: "fsanz-s15",
    title: "Australia New Zealand Food Standards Code, Schedule 15 Substances that may be used as food additives",
    publisher: "Food Standards Australia New Zealand",
    number: "Schedule 15, S15-5 table, items 8.2, 8.3",
    edition: "",
};

pub(crate) static JP_USE_STANDARDS: Source = Source {
    key: "jp-use-standards",
    title: "Standards for Use, according to Use Categories (English translation)",
    publisher: "Japan, Ministry of Health, Labour and Welfare / food additives association",
    number: "",
    edition: "about 2008 to 2012; editions of 2018 and 2020 exist",
};

pub(crate) static MEMORY_CURING: Source = Source {
    key: "memory-curing",
    title: "Figures of curing law remembered and not found",
    publisher: "no publisher",
    number: "",
    edition: "",
};

pub(crate) static UKSI_2007_1778: Source = Source {
    key: "uksi-2007-1778",
    title: "The Miscellaneous Food Additives and the Sweeteners in Food (Amendment) (England) Regulations 2007, Schedule 1",
    publisher: "UK Statutory Instruments",
    number: "S.I. 2007/1778 (original as made)",
    edition: "2007",
};

pub(crate) static CFR21_172_175: Source = Source {
    key: "cfr21-172-175",
    title: "Sodium nitrite",
    publisher: "US Code of Federal Regulations (FDA)",
    number: "21 CFR 172.175",
    edition: "2006-04-01",
};

pub(crate) static CFR21_172_177_2015: Source = Source {
    key: "cfr21-172-177-2015",
    title: "Sodium nitrite used in processing smoked chub",
    publisher: "US Code of Federal Regulations (FDA)",
    number: "21 CFR 172.177",
    edition: "2015 annual edition",
};

pub(crate) static CFR21_172_170: Source = Source {
    key: "cfr21-172-170",
    title: "Sodium nitrate",
    publisher: "US Code of Federal Regulations (FDA)",
    number: "21 CFR 172.170",
    edition: "2006-04-01",
};

pub(crate) static CFR9_319_107: Source = Source {
    key: "cfr9-319-107",
    title: "Bacon",
    publisher: "US Code of Federal Regulations (FSIS, USDA)",
    number: "9 CFR 319.107",
    edition: "49 FR 14880, Apr. 13, 1984",
};
