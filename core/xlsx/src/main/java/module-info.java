/** Tables of a job as spreadsheets, beside CSV. */
module io.github.brinewright.xlsx {
  requires static org.jspecify;
  requires transitive io.github.brinewright.core;
  requires com.opencsv;
  requires org.apache.commons.compress;
  requires org.dhatim.fastexcel;
  requires org.dhatim.fastexcel.reader;

  exports io.github.brinewright.xlsx;

  provides io.github.brinewright.job.TableFormat with
      io.github.brinewright.xlsx.Spreadsheet;
}
