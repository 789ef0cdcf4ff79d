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

pub(crate) static DE_BAFF_HOFMANN: Source = Source {
    key: "de-baff-hofmann",
    title: "K. Hofmann, Einfluß der Verarbeitung auf den Nitratgehalt der Nahrung: Tierische Produkte",
    publisher: "Federal meat research centre, Kulmbach",
    number: "",
    edition: "1980s",
};

pub(crate) static DE_CVUA_BLUTWURST: Source = Source {
    key: "de-cvua-blutwurst",
    title: "Nitrit-Höchstmengenüberschreitung in wärmebehandelten Fleischerzeugnissen",
    publisher: "Chemische und Veterinäruntersuchungsämter Baden-Württemberg",
    number: "ID 1878",
    edition: "about 2014",
};

pub(crate) static CFR9_319_107: Source = Source {
    key: "cfr9-319-107",
    title: "Bacon",
    publisher: "US Code of Federal Regulations (FSIS, USDA)",
    number: "9 CFR 319.107",
    edition: "49 FR 14880, Apr. 13, 1984",
};

pub(crate) static CFR9_319_100_101: Source = Source {
    key: "cfr9-319-100-101",
    title: "Corned beef; corned beef brisket",
    publisher: "US Code of Federal Regulations (FSIS)",
    number: "9 CFR 319.100 (end), 319.101, start of 319.102",
    edition: "printed CFR page, after 64 FR 72174 (1999)",
};

pub(crate) static CFR9_319_104_2015: Source = Source {
    key: "cfr9-319-104-2015",
    title: "Cured pork products",
    publisher: "US Code of Federal Regulations (FSIS, USDA)",
    number: "9 CFR 319.104",
    edition: "2015 annual edition (last amended 66 FR 54916 of 2001-10-31)",
};

pub(crate) static CFR9_319_105_2015: Source = Source {
    key: "cfr9-319-105-2015",
    title: "Ham patties, chopped ham, pressed ham, spiced ham and similar products",
    publisher: "US Code of Federal Regulations (FSIS, USDA)",
    number: "9 CFR 319.105",
    edition: "2015 annual edition (last amended 65 FR 34389 of 2000-05-30)",
};

pub(crate) static CFR9_319_106_2015: Source = Source {
    key: "cfr9-319-106-2015",
    title: "Country ham, country style ham, dry cured ham and the same for pork shoulder",
    publisher: "US Code of Federal Regulations (FSIS, USDA)",
    number: "9 CFR 319.106",
    edition: "2015 annual edition (42 FR 3299 of 1977-01-18, amended 64 FR 72174 of 1999-12-23, with an effective date note quoting 46 FR 1257)",
};

pub(crate) static CFR9_319_140_2015: Source = Source {
    key: "cfr9-319-140-2015",
    title: "Sausage",
    publisher: "US Code of Federal Regulations (FSIS, USDA)",
    number: "9 CFR 319.140",
    edition: "2015 annual edition (last amended 66 FR 54916 of 2001-10-31)",
};

pub(crate) static CFR9_319_141: Source = Source {
    key: "cfr9-319-141",
    title: "Fresh pork sausage",
    publisher: "US Code of Federal Regulations (FSIS)",
    number: "9 CFR 319.141",
    edition: "as amended 47 FR 28257, 28258, June 29, 1982",
};

pub(crate) static CFR9_319_142_2015: Source = Source {
    key: "cfr9-319-142-2015",
    title: "Fresh beef sausage",
    publisher: "US Code of Federal Regulations (FSIS, USDA)",
    number: "9 CFR 319.142",
    edition: "2015 annual edition (last amended 47 FR 28257 of 1982-06-29)",
};

pub(crate) static CFR9_319_143_2015: Source = Source {
    key: "cfr9-319-143-2015",
    title: "Breakfast sausage",
    publisher: "US Code of Federal Regulations (FSIS, USDA)",
    number: "9 CFR 319.143",
    edition: "2015 annual edition (55 FR 34683 of 1990-08-24, amended 66 FR 54916 of 2001-10-31)",
};

pub(crate) static CFR9_319_144: Source = Source {
    key: "cfr9-319-144",
    title: "Whole hog sausage",
    publisher: "US Code of Federal Regulations (FSIS)",
    number: "9 CFR 319.144",
    edition: "copy updated 2024-10-10",
};

pub(crate) static CFR9_319_145_2015: Source = Source {
    key: "cfr9-319-145-2015",
    title: "Italian sausage products",
    publisher: "US Code of Federal Regulations (FSIS, USDA)",
    number: "9 CFR 319.145",
    edition: "2015 annual edition (last amended 64 FR 72175 of 1999-12-23)",
};

pub(crate) static CFR9_319_15_2015: Source = Source {
    key: "cfr9-319-15-2015",
    title: "Miscellaneous beef products",
    publisher: "US Code of Federal Regulations (FSIS, USDA)",
    number: "9 CFR 319.15",
    edition: "2015 annual edition (last amended 66 FR 54916 of 2001-10-31)",
};

pub(crate) static CFR9_319_180_2015: Source = Source {
    key: "cfr9-319-180-2015",
    title: "Frankfurter, hotdog, wiener, vienna, bologna, knockwurst and similar products",
    publisher: "US Code of Federal Regulations (FSIS, USDA)",
    number: "9 CFR 319.180",
    edition: "2015 annual edition (38 FR 14742 of 1973-06-05 and later amendments)",
};

pub(crate) static CFR9_319_OTHER: Source = Source {
    key: "cfr9-319-other",
    title: "Other sections of 9 CFR part 319 (319.102, 319.103, 319.105, 319.140, 319.142, 319.143, 319.160, 319.181)",
    publisher: "US Code of Federal Regulations (FSIS)",
    number: "9 CFR part 319",
    edition: "current",
};

pub(crate) static CRC_RH: Source = Source {
    key: "crc-rh",
    title: "Constant humidity solutions",
    publisher: "CRC Handbook, p. 15-33 (A. Wexler)",
    number: "",
    edition: "2005 printing",
};

pub(crate) static FALAGAS_2010: Source = Source {
    key: "falagas-2010",
    title: "Inaccuracies in dosing drugs with teaspoons and tablespoons",
    publisher: "Int J Clin Pract 64(9):1185-1189",
    number: "doi:10.1111/j.1742-1241.2010.02402.x",
    edition: "2010-08",
};

pub(crate) static FSRE: Source = Source {
    key: "fsre",
    title: "FSRE shelf-stable training text",
    publisher: "USDA FSIS",
    number: "",
    edition: "2005/2011",
};

pub(crate) static FSRE_2005: Source = Source {
    key: "fsre-2005",
    title: "Principles of Preservation of Shelf-Stable Dried Meat Products",
    publisher: "FSRE Shelf-Stable course (food safety training for FSIS and industry)",
    number: "FSRE Shelf-Stable",
    edition: "2005-05-11",
};

pub(crate) static LABUZA_SAT: Source = Source {
    key: "labuza-sat",
    title: "ln(aw) = k1/T - k2 constants for saturated salts (after Labuza)",
    publisher: "consultancy page reproducing Labuza constants",
    number: "",
    edition: "2008",
};

pub(crate) static MELINDER: Source = Source {
    key: "melinder",
    title: "Incompressible brine data set MNA (Melinder)",
    publisher: "CoolProp 8.0.0",
    number: "",
    edition: "",
};

pub(crate) static OSU_BRINE: Source = Source {
    key: "osu-brine",
    title: "Preparation of salt brines for the fishing industry",
    publisher: "Oregon State University Extension / Sea Grant",
    number: "SG 22; ORESU-H-99-002",
    edition: "1973, 1993, 1999",
};

pub(crate) static PITZER73: Source = Source {
    key: "pitzer73",
    title: "Thermodynamics of electrolytes II (Pitzer & Mayorga)",
    publisher: "J. Phys. Chem. 77, 2300",
    number: "",
    edition: "1973",
};

pub(crate) static PORADNIK_1974: Source = Source {
    key: "poradnik-1974",
    title: "Poradnik fizykochemiczny: density of NaCl solutions",
    publisher: "WNT Warszawa, on a Torun university laboratory page",
    number: "",
    edition: "1974",
};

pub(crate) static ROGERS_PITZER: Source = Source {
    key: "rogers-pitzer",
    title: "Volumetric properties of aqueous sodium chloride solutions (after Rogers & Pitzer 1982)",
    publisher: "CRC Handbook of Chemistry and Physics, section 6",
    number: "J. Phys. Chem. Ref. Data 11, 15 (1982)",
    edition: "handbook c. 2005",
};

pub(crate) static SALOM_LEAFLET: Source = Source {
    key: "salom-leaflet",
    title: "The salometer and how to use it",
    publisher: "salt trade leaflet, publisher not visible",
    number: "",
    edition: "undated",
};

pub(crate) static SALTINST: Source = Source {
    key: "saltinst",
    title: "Chemical and physical properties of salt: solubility at various temperatures",
    publisher: "Salt Institute",
    number: "",
    edition: "c. 2013",
};

pub(crate) static SEAFISH_BRINE: Source = Source {
    key: "seafish-brine",
    title: "Salting or brining of the fish: brine strength table",
    publisher: "Seafish (UK seafood authority) training site",
    number: "",
    edition: "undated",
};

pub(crate) static SMITHSONIAN_FP: Source = Source {
    key: "smithsonian-fp",
    title: "Freezing point lowering by electrolytes in aqueous solution (after Smithsonian Physical Tables 9th ed.)",
    publisher: "CRC Handbook, p. 15-29",
    number: "",
    edition: "2005 printing",
};

pub(crate) static STEIGER2008: Source = Source {
    key: "steiger2008",
    title: "Pitzer-type model of Steiger, Kiekbusch & Nicolai",
    publisher: "Constr. Build. Mater. 22, 1841",
    number: "",
    edition: "2008",
};

pub(crate) static USDA_FB1438: Source = Source {
    key: "usda-fb1438",
    title: "Making fermented pickles",
    publisher: "US Dept. of Agriculture",
    number: "Farmers Bulletin 1438, Table 1",
    edition: "Aug 1924",
};

pub(crate) static USDA_SR28: Source = Source {
    key: "usda-sr28",
    title: "USDA National Nutrient Database for Standard Reference, Release 28 (ASCII files FOOD_DES, NUT_DATA, WEIGHT, SRC_CD, DERIV_CD)",
    publisher: "USDA Agricultural Research Service, Nutrient Data Laboratory",
    number: "SR28",
    edition: "2015-09 (newest AddMod date in the file 09/2015; 8,789 foods, 679,045 nutrient rows, 15,438 weight rows counted)",
};

pub(crate) static USDA_YIELDS_R2: Source = Source {
    key: "usda-yields-r2",
    title: "USDA Table of Cooking Yields for Meat and Poultry, Release 2 (spreadsheet)",
    publisher: "USDA Agricultural Research Service, Nutrient Data Laboratory",
    number: "Release 2; doi:10.15482/USDA.ADC/1409031 (doi as reported elsewhere)",
    edition: "2014-09",
};

pub(crate) static CFR9_318_22_2015: Source = Source {
    key: "cfr9-318-22-2015",
    title: "Determination of added water in cooked sausages",
    publisher: "US Code of Federal Regulations (FSIS, USDA)",
    number: "9 CFR 318.22",
    edition: "2015 annual edition (55 FR 7299 of 1990-03-01)",
};

pub(crate) static MI_569: Source = Source {
    key: "mi-569",
    title: "Regulation No. 569, Smoked Fish",
    publisher: "Michigan Dept. of Agriculture and Rural Development",
    number: "Mich. Admin. Code R 285.569.1-.18",
    edition: "current through late 2024; original 1995/1997",
};

pub(crate) static ACMSF2007: Source = Source {
    key: "acmsf2007",
    title: "Report on the safe cooking of burgers",
    publisher: "UK Advisory Committee on the Microbiological Safety of Food, ad hoc group",
    number: "",
    edition: "March 2007",
};

pub(crate) static CFR9_318_10_2015: Source = Source {
    key: "cfr9-318-10-2015",
    title: "Prescribed treatment of pork and products containing pork to destroy trichinae",
    publisher: "US Code of Federal Regulations (FSIS, USDA)",
    number: "9 CFR 318.10 (removed by a 2018 final rule, see lethality.toml trichina_removed)",
    edition: "2015 annual edition (last amended 57 FR 56440 of 1992-11-30)",
};

pub(crate) static CFR9_318_23_2015: Source = Source {
    key: "cfr9-318-23-2015",
    title: "Heat-processing and stabilization requirements for uncured meat patties",
    publisher: "US Code of Federal Regulations (FSIS, USDA)",
    number: "9 CFR 318.23",
    edition: "2015 annual edition (64 FR 744 of 1999-01-06)",
};

pub(crate) static FOODCODE2022: Source = Source {
    key: "foodcode2022",
    title: "FDA Food Code 2022",
    publisher: "US Food and Drug Administration",
    number: "Food Code 2022",
    edition: "2022",
};

pub(crate) static FR1986VIII: Source = Source {
    key: "fr1986viii",
    title: "Arrete du 10 juillet 1986, annexe VIII: freezing treatment against Trichinella (same three methods as the EU regulation)",
    publisher: "Republique francaise",
    number: "arrete 1986-07-10, annexe VIII",
    edition: "consolidated text in open legal data",
};

pub(crate) static FSAUK_RELAY: Source = Source {
    key: "fsauk_relay",
    title: "Basic food hygiene: minimum cooking requirements for meat (relays the Food Standards Agency pairs)",
    publisher: "training course page",
    number: "",
    edition: "",
};

pub(crate) static HC_CHART: Source = Source {
    key: "hc_chart",
    title: "Safe internal cooking temperatures chart",
    publisher: "Health Canada (transcribed in a public recipe book that cites canada.ca)",
    number: "",
    edition: "later than 2013 (has mechanically tenderized beef at 63 C and whole poultry 82 C)",
};

pub(crate) static MN0340: Source = Source {
    key: "mn0340",
    title: "Minnesota Rules 4626.0340 Cooking raw animal foods 3-401.11 (Food Code 2013)",
    publisher: "State of Minnesota",
    number: "4626.0340",
    edition: "2019 version",
};

pub(crate) static MN0340OLD: Source = Source {
    key: "mn0340old",
    title: "Minnesota Rules 4626.0340 (older version, Food Code of the 1990s)",
    publisher: "State of Minnesota",
    number: "4626.0340",
    edition: "version in force to 2019",
};

pub(crate) static NY271: Source = Source {
    key: "ny271",
    title: "1 NYCRR 271-2.10 Cooking potentially hazardous foods",
    publisher: "New York State",
    number: "1 NYCRR 271-2.10",
    edition: "",
};

pub(crate) static PACODE1_333: Source = Source {
    key: "pacode1_333",
    title: "7 Pa. Code 1.333 Treatment by refrigerating",
    publisher: "Commonwealth of Pennsylvania",
    number: "7 Pa. Code 1.333",
    edition: "effective through 54 Pa.B. 1032 (Feb 24, 2024)",
};

pub(crate) static VA700: Source = Source {
    key: "va700",
    title: "12VAC5-421-700 Raw animal foods (adopts FDA Food Code 2017 section 3-401.11)",
    publisher: "Commonwealth of Virginia",
    number: "12VAC5-421-700",
    edition: "text in force since June 2021",
};

pub(crate) static WAC2022: Source = Source {
    key: "wac2022",
    title: "WAC 246-215-03400 Cooking - raw animal foods (adopts FDA Food Code 2017 3-401.11)",
    publisher: "Washington State",
    number: "WAC 246-215-03400",
    edition: "2022 archive",
};

pub(crate) static ASHRAE_F17: Source = Source {
    key: "ashrae-f17",
    title: "ASHRAE Handbook: Fundamentals, chapter 1, Psychrometrics, as stated in the source and the tests of the general-purpose library PsychroLib 2.5.0",
    publisher: "ASHRAE",
    number: "chapter 1",
    edition: "2017",
};

pub(crate) static AU_3_2_2: Source = Source {
    key: "au-3-2-2",
    title: "Standard 3.2.2 clause 7(3), quoted",
    publisher: "Food Standards Australia New Zealand (quoted by another page)",
    number: "Standard 3.2.2 cl 7(3)",
    edition: "",
};

pub(crate) static BAD_BUG_1992: Source = Source {
    key: "bad-bug-1992",
    title: "Factors Affecting the Growth of Some Foodborne Pathogens (Bad Bug Book)",
    publisher: "FDA CFSAN",
    number: "",
    edition: "January 1992, hypertext updated 1999-03",
};

pub(crate) static CA_3CCR_910_15: Source = Source {
    key: "ca-3ccr-910-15",
    title: "Cal. Code Regs. tit. 3, section 910.15, Cooling of Heated Potentially Hazardous Products",
    publisher: "State of California",
    number: "3 CCR 910.15",
    edition: "section filed 2007-05-31, operative 2007-06-30; read current through Register 2024 No. 25",
};

pub(crate) static CFIA_COOLING: Source = Source {
    key: "cfia-cooling",
    title: "Preventive control recommendations for cooling heat processed meat products",
    publisher: "Canadian Food Inspection Agency",
    number: "1522948253869",
    edition: "current guidance page",
};

pub(crate) static CFIA_FERM_NOTE: Source = Source {
    key: "cfia-ferm-note",
    title: "Preventive controls for fermented and dried meat products (machine-made digest of the CFIA page)",
    publisher: "Canadian Food Inspection Agency, as digested",
    number: "",
    edition: "page read by the digester on 2026-08-02",
};

pub(crate) static FDA_HAZ_CH8_3ED: Source = Source {
    key: "fda-haz-ch8-3ed",
    title: "FDA/UF seafood compendium chapter 8 Vacuum and MAP packaged fish",
    publisher: "higiene.unex.es mirror",
    number: "Chapter 8",
    edition: "2000-09-21",
};

pub(crate) static FOODCODE2022_CH1: Source = Source {
    key: "foodcode2022-ch1",
    title: "FDA Food Code 2022, chapter 1, definitions",
    publisher: "US Food and Drug Administration (mirror held by a Connecticut town)",
    number: "Food Code 2022, 1-201.10(B)",
    edition: "2022",
};

pub(crate) static FSANZ_TEMP: Source = Source {
    key: "fsanz-temp",
    title: "Fact sheet: temperature control, charities and community organisations",
    publisher: "FSANZ",
    number: "",
    edition: "",
};

pub(crate) static FSIS_STAB_2021: Source = Source {
    key: "fsis-stab-2021",
    title: "FSIS Stabilization Guideline for Meat and Poultry Products (Revised Appendix B)",
    publisher: "USDA FSIS",
    number: "FSIS-GD-2021-13",
    edition: "December 2021",
};

pub(crate) static JAMES_MEAT_REFRIG: Source = Source {
    key: "james-meat-refrig",
    title: "Meat refrigeration handbook, chapter 16 Secondary chilling of meat and meat products (pp 322-328), citing Gaze et al. 1998",
    publisher: "textbook chapter",
    number: "Tables 16.1, 16.2, 16.7",
    edition: "title page not seen (memory: James and James, Meat Refrigeration, 2002)",
};

pub(crate) static KOSFA_38_5_1043_T1: Source = Source {
    key: "kosfa-38-5-1043-t1",
    title: "QMRA of Salmonella in chicken, Table 1 Parameters used in the baseline model",
    publisher: "Korean J. Food Sci. Anim. Resour.",
    number: "38(5):1043, Table 1",
    edition: "2018",
};

pub(crate) static MC2D_LM: Source = Source {
    key: "mc2d-lm",
    title: "Case study: L. monocytogenes in cold-smoked salmon (vignette of the general Monte-Carlo package mc2d), by R. Pouillot, M.-L. Delignette-Muller, M. Cornu",
    publisher: "package documentation",
    number: "inst/doc/mc2dLmEnglish.rnw",
    edition: "stored commit 3fc2262a546d8301244df0417dd6cd3814d4279c",
};

pub(crate) static MSU_APPB_OPT2: Source = Source {
    key: "msu-appb-opt2",
    title: "Appendix B: Stabilization Option 2 Rapid Cooling Between 120F and 80F",
    publisher: "Michigan State University Extension",
    number: "",
    edition: "2020-03-17",
};

pub(crate) static OSU_117: Source = Source {
    key: "osu-117",
    title: "Temperature Regulations/Guidelines (7/12/99)",
    publisher: "Ohio State University Meat Science Extension",
    number: "node 117",
    edition: "1999-07-12",
};

pub(crate) static QLD_SOMERSET: Source = Source {
    key: "qld-somerset",
    title: "Food Info - Operate: four-hour/two-hour guide",
    publisher: "Somerset Regional Council, Queensland",
    number: "",
    edition: "",
};

pub(crate) static SANCO_LM_2008: Source = Source {
    key: "sanco-lm-2008",
    title: "Guidance document on Listeria monocytogenes shelf-life studies for RTE foods, growth limits table",
    publisher: "European Commission DG SANCO, reproduced",
    number: "",
    edition: "2008",
};

pub(crate) static SNYDER_SUMMARY: Source = Source {
    key: "snyder-summary",
    title: "Food Pathogen Control Data Summary",
    publisher: "Hospitality Institute of Technology and Management",
    number: "",
    edition: "",
};

pub(crate) static TOMPKIN_TABLE1: Source = Source {
    key: "tompkin-table1",
    title: "Table 1 Minimum growth temperatures for selected foodborne pathogens",
    publisher: "Bruce Tompkin",
    number: "Table 1",
    edition: "",
};

pub(crate) static UK_2005_2059: Source = Source {
    key: "uk-2005-2059",
    title: "The Food Hygiene (England) Regulations 2005, Schedule 4 para 7",
    publisher: "UK Government",
    number: "SI 2005/2059",
    edition: "as made (since replaced; same wording in Wales 2006)",
};

pub(crate) static UK_2013_2996: Source = Source {
    key: "uk-2013-2996",
    title: "The Food Safety and Hygiene (England) Regulations 2013, Schedule 4 para 2",
    publisher: "UK Government",
    number: "SI 2013/2996",
    edition: "as made",
};

pub(crate) static UK_NI_2006_3: Source = Source {
    key: "uk-ni-2006-3",
    title: "The Food Hygiene Regulations (Northern Ireland) 2006, Schedule 4 para 5",
    publisher: "UK Government (NI)",
    number: "NISR 2006/3",
    edition: "as made",
};

pub(crate) static US_EATRIGHT: Source = Source {
    key: "us-eatright",
    title: "Refrigerate: the basics",
    publisher: "Academy of Nutrition and Dietetics",
    number: "",
    edition: "",
};

pub(crate) static AK_18AAC34: Source = Source {
    key: "ak-18aac34",
    title: "Seafood processing and inspection",
    publisher: "Alaska Dept. of Environmental Conservation",
    number: "18 AAC 34.122, .310, .315, .320",
    edition: "",
};

pub(crate) static CFA_2021: Source = Source {
    key: "cfa-2021",
    title: "Vacuum Packed and MAP Guidance revised (news note)",
    publisher: "Chilled Food Association (UK)",
    number: "",
    edition: "2021-04-15",
};

pub(crate) static COUNTY_ROP_SHEET: Source = Source {
    key: "county-rop-sheet",
    title: "HACCP and Variance Requirement Guidelines: Reduced Oxygen Packaging",
    publisher: "US county health department sheet referencing the 2013 Food Code",
    number: "",
    edition: "about 2013-2017",
};

pub(crate) static FSA_VP_2008_FACTSHEET: Source = Source {
    key: "fsa-vp-2008-factsheet",
    title: "Vacuum packed chilled foods: reducing the risk of Clostridium botulinum (fact sheet Vac Pack 0708)",
    publisher: "UK Food Standards Agency",
    number: "",
    edition: "2008-07",
};

pub(crate) static FSA_VP_TRAINING: Source = Source {
    key: "fsa-vp-training",
    title: "FSA vacuum packing training, module 3 section 2: equivalent time/temperature table",
    publisher: "UK Food Standards Agency (data from CFA Best Practice Guidelines, 4th ed., 2006)",
    number: "",
    edition: "web",
};

pub(crate) static FSIS_FREEZING: Source = Source {
    key: "fsis-freezing",
    title: "Freezing and Food Safety: Freezer Storage Chart (0 F)",
    publisher: "USDA FSIS",
    number: "",
    edition: "web edition current in 2010-2013",
};

pub(crate) static FSIS_HAM: Source = Source {
    key: "fsis-ham",
    title: "Ham and Food Safety / Hams and Food Safety: Ham Storage Chart",
    publisher: "USDA FSIS",
    number: "",
    edition: "undated web edition",
};

pub(crate) static FSIS_SAUSAGE: Source = Source {
    key: "fsis-sausage",
    title: "Sausages and Food Safety: Sausage Storage Chart",
    publisher: "USDA FSIS",
    number: "",
    edition: "undated web edition",
};

pub(crate) static FSIS_TURKEY_THAW: Source = Source {
    key: "fsis-turkey-thaw",
    title: "Turkey Basics: Safe Thawing",
    publisher: "USDA FSIS, reproduced by a county health department",
    number: "",
    edition: "copy dated 2025-11-21",
};

pub(crate) static IIR_1986: Source = Source {
    key: "iir-1986",
    title: "Recommendations for the Processing and Handling of Frozen Foods, 3rd edition: practical storage life table",
    publisher: "International Institute of Refrigeration",
    number: "",
    edition: "1986",
};

pub(crate) static LOVE_1967: Source = Source {
    key: "love-1967",
    title: "Article on cold storage of fish, Table 1 (storage life at several temperatures)",
    publisher: "Timarit Verkfraedingafelags Islands",
    number: "",
    edition: "1967-12-01, journal page 83, scan page 85",
};

pub(crate) static MSU_E3259: Source = Source {
    key: "msu-e3259",
    title: "Thawing Foods Safely",
    publisher: "Michigan State University Extension",
    number: "E3259",
    edition: "2022-10-24",
};

pub(crate) static MSU_VACFISH: Source = Source {
    key: "msu-vacfish",
    title: "Open your vacuum packed fish before thawing (report of the MSU Extension article of 2014-05-31)",
    publisher: "food-safety.com news",
    number: "",
    edition: "2014-06-03",
};

pub(crate) static MU_OIL: Source = Source {
    key: "mu-oil",
    title: "Storing herbs and garlic in oil",
    publisher: "Missouri extension blog",
    number: "",
    edition: "",
};

pub(crate) static NCHFP_GARLIC: Source = Source {
    key: "nchfp-garlic",
    title: "Freezing garlic-in-oil",
    publisher: "National Center for Home Food Preservation (Univ. of Georgia)",
    number: "",
    edition: "",
};

pub(crate) static NY_262: Source = Source {
    key: "ny-262",
    title: "Part 262, Fish processing and smoking establishments",
    publisher: "New York Dept. of Agriculture and Markets",
    number: "1 NYCRR 262.1-262.7",
    edition: "",
};

pub(crate) static OKSTATE_OIL: Source = Source {
    key: "okstate-oil",
    title: "Safely infusing oils at home",
    publisher: "Oklahoma State University Extension",
    number: "",
    edition: "",
};

pub(crate) static PSU_OIL: Source = Source {
    key: "psu-oil",
    title: "Preserving foods in oil",
    publisher: "Penn State Extension",
    number: "",
    edition: "",
};

pub(crate) static VP_CONTROLS_SUMMARY: Source = Source {
    key: "vp-controls-summary",
    title: "Keep up to date on shelf life for chilled vacuum pack food (summary of the FSA controlling factors)",
    publisher: "UK food-safety consultancy page",
    number: "",
    edition: "2021",
};

pub(crate) static WFLO_FROZEN_MEATS: Source = Source {
    key: "wflo-frozen-meats",
    title: "WFLO Commodity Storage Manual: Meats, Frozen",
    publisher: "World Food Logistics Organization",
    number: "",
    edition: "revised 2008",
};

pub(crate) static WI_3_502_11: Source = Source {
    key: "wi-3-502-11",
    title: "Wisconsin Food Code 3-502.11 Variance requirement",
    publisher: "Wisconsin DATCP",
    number: "ATCP 75 App. 3-502.11",
    edition: "",
};

pub(crate) static CFR_114_3: Source = Source {
    key: "cfr-114-3",
    title: "Acidified foods, definitions",
    publisher: "US CFR",
    number: "21 CFR 114.3",
    edition: "",
};
