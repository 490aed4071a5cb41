package spanledger.action;

/**
 * Equal forces in a row that may stand anywhere along a path, for example persons who follow each
 * other.
 *
 * @param name unique in its job
 * @param path where they walk
 * @param number how many, at least 1
 * @param spacing from one to the next, mm
 * @param force the size of each, N
 */
public record LoadTrain(String name, LoadPath path, int number, double spacing, Figure force) {}
