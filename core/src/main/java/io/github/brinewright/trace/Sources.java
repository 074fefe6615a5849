package io.github.brinewright.trace;

/** The publications and practices that the calculations rest on. */
public final class Sources {
  private Sources() {}

  /**
   * Allowances that raise the hardness for iron and manganese; published values run from 2 to 5.
   */
  public static final Source FOULING_ALLOWANCE =
      Source.commonPractice(
          "fouling-allowance", "4 gpg per mg/L iron, 6 gpg per mg/L manganese; published 2 to 5");

  /** Design use per head. */
  public static final Source USE_PER_HEAD =
      Source.commonPractice("use-per-head", "75 gallons a person a day for sizing");

  /** Indoor use by household size, and its fall from 1999 to 2016. */
  public static final Source USE_STATISTICS =
      Source.fromMemory(
          "use-statistics",
          "Residential End Uses of Water: 37.2 n + 69.2 gal/day (1999), less 22 % by 2016"
              + " (WRF 4309b)");

  /** How many of the people of a guest house are there on a mean day. */
  public static final Source OCCUPANCY =
      Source.commonPractice("occupancy", "more than 8 people: 0.6 of full occupancy on average");

  /** Peak flow of a line of hot water alone. */
  public static final Source HOT_PEAK =
      Source.fromMemory(
          "hot-peak", "International Plumbing Code: three quarters of the units, hot line alone");

  /** The home's own bill. */
  public static final Source WATER_BILL = Source.given("the home's winter water bill");

  /** What readings of some months say of the mean use. */
  public static final Source READINGS =
      Source.commonPractice(
          "readings",
          "conjugate gamma rule, days by DAIAD open meter data; season 10 %, year to year 4 %, and"
              + " at least 14 days away a year");

  /** A plain product or quotient of the figures named. */
  public static final Source DEFINITION =
      Source.derived("definition", "product, sum or quotient of the figures named");

  /** A figure chosen by the dealer. */
  public static final Source DEALER = Source.given("the dealer's own figure");

  /** A figure stated by the home. */
  public static final Source HOME = Source.given("the site visit");

  /** Usable share of a rating and salt per usable capacity. */
  public static final Source RATED_CAPACITY =
      Source.commonPractice(
          "rated-capacity", "usable = 0.8 x rated; 3 lb of salt per 10,000 usable grains");

  /** Design factor on a dosage curve. */
  public static final Source DESIGN_FACTOR =
      Source.commonPractice(
          "design-factor", "share of the curve kept after fouling, uneven flow and age");

  /** Closed form for a standard gel resin. */
  public static final Source STANDARD_GEL =
      Source.published(
          "standard-gel",
          "operator training slides on ion exchange: 10,286 ln(D) + 1,326.3, D 3 to 20 lb/ft3");

  /** Standard and fine mesh at three dosages. */
  public static final Source KELLER_2005 =
      Source.published("keller-2005", "Keller, Water Conditioning & Purification, 2005, table 3");

  /** Fine mesh set against standard gel. */
  public static final Source FINE_MESH =
      Source.derived(
          "fine-mesh",
          "1.083 x standard gel: Keller's fine mesh is 1.077, 1.086 and 1.086 of his standard mesh"
              + " at 5, 10 and 15 lb");

  /** Capacities at 5, 8 and 12 lb. */
  public static final Source MICHAUD_2015 =
      Source.published("michaud-2015", "Michaud, Water Conditioning & Purification, 2015");

  /** Fixed days between regenerations. */
  public static final Source CLOCK_DAYS =
      Source.commonPractice("clock-days", "whole days, rounded down, at most 14");

  /** One design day held back. */
  public static final Source RESERVE =
      Source.commonPractice("reserve", "one day's design use held back until the night");

  /** Volume past the set point before a delayed regeneration starts. */
  public static final Source RENEWAL =
      Source.published(
          "renewal",
          "renewal theory (Cox, 1962): mean excess (1 + CV^2)/2 of a day; CV 0.46 from DAIAD"
              + " open meter data, CC BY-SA 4.0");

  /** Salt dissolved by a gallon of refill water. */
  public static final Source REFILL =
      Source.commonPractice("refill", "3 lb of salt dissolve in a gallon of refill water");

  /** Saturated brine by temperature. */
  public static final Source SALT_INSTITUTE =
      Source.published("salt-institute", "Salt Institute, saturated brine tables");

  /** Solubility of potassium chloride. */
  public static final Source CRC_SOLUBILITY =
      Source.fromMemory("crc-solubility", "CRC Handbook, aqueous solubility of KCl");

  /** Rinse volumes of a softener. */
  public static final Source UFC_RINSE =
      Source.published("ufc-rinse", "UFC 3-240-13FN, 2-2.5.1.2: slow rinse 7.5-22.5 gal/ft3");

  /** What the years take from a resin. */
  public static final Source RESIN_AGE =
      Source.published(
          "resin-age",
          "UFC 3-240-13FN, 2-2.5.1.4: 1 to 5 % of the capacity a year, replaced when a quarter is"
              + " lost");

  /** Minutes of a household cycle. */
  public static final Source HOUSEHOLD_CYCLE =
      Source.commonPractice("household-cycle", "household cycle minutes");

  /** Sodium and potassium from the exchanged equivalents. */
  public static final Source STOICHIOMETRY =
      Source.derived("stoichiometry", "atomic weights: 2 NaCl for each CaCO3 removed");

  /** Drinking-water advice on sodium. */
  public static final Source EPA_SODIUM =
      Source.published("epa-sodium", "EPA 822-R-03-006 (2003), drinking water advisory: sodium");

  /** Elective efficiency rating. */
  public static final Source NSF_44 =
      Source.published(
          "nsf-44", "NSF/ANSI 44: at least 3,350 grains/lb and at most 5.0 gal per 1,000 grains");

  /** Best practice of one sewerage district. */
  public static final Source MMSD =
      Source.published("mmsd", "Madison sewerage district guidelines: at least 3 days");

  /** Present value factors. */
  public static final Source HANDBOOK_135 =
      Source.published("handbook-135", "NIST Handbook 135, life-cycle costing: SPV, UPV, UPV*");

  /** Secondary limits for taste and stains. */
  public static final Source SECONDARY_LIMITS =
      Source.published("cfr-143", "40 CFR 143.3: iron 0.3, manganese 0.05, chloride 250, TDS 500");

  /** Hardness classes. */
  public static final Source USGS_CLASSES =
      Source.published("usgs-classes", "USGS Water-Supply Paper 1812: 60, 120, 180 mg/L");

  /** Any statement of the trade without a single source. */
  public static final Source COMMON_PRACTICE =
      Source.commonPractice("common-practice", "the usual way of the trade, no single source");

  /** The tariff that the dealer entered. */
  public static final Source TARIFF = Source.given("the tariff entered for this address");

  /** Pressure loss of a packed bed. */
  public static final Source ERGUN =
      Source.published("ergun", "Ergun, Chem. Eng. Progress 48 (1952) 89");

  /** Bed expansion. */
  public static final Source RICHARDSON_ZAKI =
      Source.published(
          "richardson-zaki",
          "Richardson & Zaki, Trans. IChemE 32 (1954) 35; drag law Barati et al., Powder"
              + " Technology 257 (2014) 11");

  /** Peak flow by number of bathrooms. */
  public static final Source PEAK_BY_BATHROOMS =
      Source.commonPractice(
          "peak-by-bathrooms", "3 gpm for the kitchen and laundry and 3 gpm for each bathroom");

  /** Peak flow by fixture units. */
  public static final Source FIXTURE_UNITS =
      Source.published(
          "fixture-units", "International Plumbing Code, appendix E, table E103.3(3), flush tanks");

  /** Capacity in cold water. */
  public static final Source COLD_WATER =
      Source.published(
          "cold-water", "Michaud, Water Conditioning & Purification, 2023: below 50 F");

  /** Day-to-day variation of use. */
  public static final Source METER_DATA =
      Source.published(
          "meter-data", "DAIAD open meter data, trial A (2016-17), CC BY-SA 4.0: CV 0.461");

  /** Share of hot water. */
  public static final Source HOT_SHARE =
      Source.published(
          "hot-share", "Region of Waterloo via The Record, 2019-12-04: 35 % of the use is hot");

  /** Regeneration water of an efficient softener. */
  public static final Source WATERSENSE =
      Source.published(
          "watersense", "EPA WaterSense on softeners: up to 25 gal a day, 10,000 gal a year");

  /** Highest static pressure in a home. */
  public static final Source PRESSURE_LIMIT =
      Source.fromMemory("pressure-limit", "International Plumbing Code 604.8: 80 psi");

  /** Sustained flow through the area of a bed. */
  public static final Source AREA_LOADING =
      Source.published(
          "area-loading", "Water Treatment Plant Design, ion exchange: sustained flow by area");

  /** When lean salt dosages work. */
  public static final Source TRADE_BOOKLET =
      Source.published(
          "trade-booklet",
          "trade association booklet: high efficiency assumes iron < 2 and TDS < 750 mg/L");

  /** Iron in Canadian drinking water. */
  public static final Source HEALTH_CANADA_IRON =
      Source.published(
          "health-canada-iron",
          "Health Canada, drinking water guidelines: aesthetic objective 0.1 mg/L of iron");

  /** Manganese in Canadian drinking water. */
  public static final Source HEALTH_CANADA_MANGANESE =
      Source.fromMemory(
          "health-canada-manganese",
          "Health Canada, drinking water guidelines: at most 0.12 mg/L of manganese");

  /** Advice on manganese in the United States. */
  public static final Source EPA_MANGANESE =
      Source.fromMemory(
          "epa-manganese", "US EPA, drinking water health advisory for manganese: 0.3 mg/L");

  /** Nitrate in drinking water. */
  public static final Source NITRATE_LIMIT =
      Source.fromMemory("nitrate-limit", "40 CFR 141.62: 10 mg/L of nitrate, as nitrogen");

  /** Chlorine and chloramine on resin, and what carbon takes of them. */
  public static final Source RESIN_AND_OXIDANTS =
      Source.published(
          "resin-and-oxidants",
          "dardel.info, resins and oxidants: 0.2 mg/L of free chlorine believed safe for gel"
              + " resin; carbon takes about half of chloramine");

  /** Softeners that drain to a sewer in California. */
  public static final Source CALIFORNIA =
      Source.published(
          "california",
          "California Health and Safety Code 116785: demand control, certified at least 4,000"
              + " grains/lb");
}
