/** Proposals and other documents for homes, and their data. */
// The command line is compiled later and is not there yet.
@SuppressWarnings("module")
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
  exports io.github.brinewright.proposal;

  // Until the command line reads documents through the public packages alone.
  exports io.github.brinewright.internal.document to
      io.github.brinewright.cli;
}
