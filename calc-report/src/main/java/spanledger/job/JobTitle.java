package spanledger.job;

import java.time.LocalDate;
import java.util.List;

/**
 * The title block of a job.
 *
 * @param title what is calculated
 * @param reference the author's number for it
 * @param client for whom; may be empty
 * @param engineer who answers for it; may be empty
 * @param date the date printed on the documents
 * @param notes remarks for the reader, in order
 */
public record JobTitle(
    String title,
    String reference,
    String client,
    String engineer,
    LocalDate date,
    List<String> notes) {
  public JobTitle {
    notes = List.copyOf(notes);
  }
}
