/**
 * Sections, alloys, bolts and rule sets as data with provenance, and their readers.
 *
 * <p>An export is added here with the first public type of its package.
 */
module spanledger.tables {
  requires transitive spanledger.core;
  requires com.fasterxml.jackson.databind;
  requires java.measure;
  requires org.apache.commons.text;
  requires tech.units.indriya;

  exports spanledger.tables;
}
