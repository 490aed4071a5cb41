package spanledger.job.problem;

/**
 * What is wrong, in words, before it is tied to a place in a file.
 *
 * @param found what was found
 * @param expected what was expected instead
 * @param remedy how to mend it
 */
public record Finding(String found, String expected, String remedy) {}
