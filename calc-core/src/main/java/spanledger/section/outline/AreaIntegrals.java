package spanledger.section.outline;

/**
 * Integrals over a section about some origin.
 *
 * @param length length of the boundary, mm
 * @param area mm²
 * @param firstY ∫y dA, mm³
 * @param firstZ ∫z dA, mm³
 * @param squareY ∫y² dA, mm⁴
 * @param squareZ ∫z² dA, mm⁴
 * @param productYZ ∫yz dA, mm⁴
 */
public record AreaIntegrals(
    double length,
    double area,
    double firstY,
    double firstZ,
    double squareY,
    double squareZ,
    double productYZ) {

  /** The integrals over two areas together. */
  public AreaIntegrals plus(AreaIntegrals other) {
    return new AreaIntegrals(
        length + other.length,
        area + other.area,
        firstY + other.firstY,
        firstZ + other.firstZ,
        squareY + other.squareY,
        squareZ + other.squareZ,
        productYZ + other.productYZ);
  }

  /** The same about an origin that the given vector leads to. */
  public AreaIntegrals about(Point origin) {
    double y = origin.y();
    double z = origin.z();
    return new AreaIntegrals(
        length,
        area,
        firstY - y * area,
        firstZ - z * area,
        squareY - 2 * y * firstY + y * y * area,
        squareZ - 2 * z * firstZ + z * z * area,
        productYZ - y * firstZ - z * firstY + y * z * area);
  }
}
