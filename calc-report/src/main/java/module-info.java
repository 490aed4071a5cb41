/** Job files, command line, workbook and summaries. */
module spanledger.report {
  requires transitive spanledger.core;
  requires transitive spanledger.tables;
  requires com.fasterxml.jackson.databind;
  requires com.networknt.schema;
  requires info.picocli;
  requires java.desktop;
  requires java.xml;
  requires org.apache.commons.compress;
  requires org.apache.fontbox;
  requires org.apache.pdfbox;
  requires org.apache.pdfbox.io;
  requires org.apache.poi.ooxml;
  requires tech.units.indriya;

  exports spanledger.cli;

  // picocli reads the annotated fields and methods of the commands.
  opens spanledger.cli to
      info.picocli;
}
