/** Proposals and other documents for homes, and their data. */
module io.github.brinewright.pdf {
  requires static transitive org.jspecify;
  requires transitive io.github.brinewright.core;
  requires org.apache.pdfbox;
  requires org.apache.pdfbox.io;
  requires org.apache.fontbox;
  // PDFBox has no descriptor that would ask for these.
  requires org.apache.commons.logging;
  requires jdk.unsupported;
  requires com.fasterxml.jackson.jr.ob;
  requires java.desktop;

  exports io.github.brinewright.exchange;
  exports io.github.brinewright.model;
  exports io.github.brinewright.proposal;
}
