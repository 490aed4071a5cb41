package spanledger.workbook.layout;

import java.time.LocalDate;

/**
 * What a workbook says about itself.
 *
 * @param job the name of the job, in page headers
 * @param title the title of the document
 * @param issued the date it carries; part of the input, never the clock's
 * @param digest the beginning of the digest of the file that it was made from, in page footers; may
 *     be empty
 */
public record WorkbookIdentity(String job, String title, LocalDate issued, String digest) {}
