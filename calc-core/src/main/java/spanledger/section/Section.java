package spanledger.section;

/**
 * A named cross-section.
 *
 * @param name its name in the job, for example {@code stringer 150x50}
 * @param shape its outline
 * @param properties what the shape's calculation gives
 */
public record Section(String name, Shape shape, SectionProperties properties) {

  /**
   * @throws IllegalArgumentException if the properties are not those of the shape
   */
  public Section {
    if (!properties.equals(SectionProperties.of(shape))) {
      throw new IllegalArgumentException(
          "The properties of section " + name + " are not those of its shape.");
    }
  }

  /**
   * A section with the properties of its shape.
   *
   * @throws spanledger.procedure.OutOfDomainException if the shape has no properties
   */
  public Section(String name, Shape shape) {
    this(name, shape, SectionProperties.of(shape));
  }
}
