package io.github.brinewright.regeneration;

/** How a meter takes the reserve. */
public enum ReserveForm {
  /** It is deducted already from the volume and the capacity that are set; none is set besides. */
  DEDUCTED,
  /**
   * Volume and capacity are set whole, and the control holds back a reserve that is set besides.
   */
  SEPARATE
}
