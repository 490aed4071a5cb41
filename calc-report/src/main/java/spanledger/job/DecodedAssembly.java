package spanledger.job;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import spanledger.assembly.GeneratedFrame;
import spanledger.frame.Support;
import spanledger.job.source.Located;

/**
 * What came of the assembly of a job.
 *
 * @param built the assembly and its frame; empty if the job has none or it has faults
 * @param isSound whether it has no faults; one without any is sound
 * @param makers the entries of its platforms and stairs
 */
record DecodedAssembly(Optional<BuiltAssembly> built, boolean isSound, Set<Located.Entry> makers) {

  /** A job without an assembly. */
  static final DecodedAssembly NONE = new DecodedAssembly(Optional.empty(), true, Set.of());

  DecodedAssembly {
    makers = Set.copyOf(makers);
  }

  /** The frame that it made. */
  private Optional<GeneratedFrame> frame() {
    return built.map(BuiltAssembly::frame);
  }

  /** An assembly with faults. */
  static DecodedAssembly faulty(Set<Located.Entry> makers) {
    return new DecodedAssembly(Optional.empty(), false, makers);
  }

  /** Puts generated feet before supports that the job gives by hand. */
  void addFeetTo(Names<Support> names) {
    Map<String, Support> feet = frame().map(GeneratedFrame::feet).orElse(Map.of());
    addTo(names, made -> List.of(), Support::toString);
    feet.forEach((name, support) -> names.addGenerated(entry(name), support));
  }

  private Located.Entry entry(String name) {
    String maker = name.substring(0, name.indexOf('/'));
    Located.Entry found =
        makers.stream().filter(one -> one.key().equals(maker)).findFirst().orElseThrow();
    return new Located.Entry(name, found.keyPlace(), found.value());
  }

  /** Puts generated things before those that the job gives by hand. */
  <T> void addTo(
      Names<T> names, Function<GeneratedFrame, List<T>> things, Function<T, String> nameOf) {
    if (!isSound && built.isEmpty()) {
      names.leaveOpen(makers.stream().map(Located.Entry::key).collect(Collectors.toSet()));
    }
    for (T thing : frame().map(things).orElse(List.of())) {
      names.addGenerated(entry(nameOf.apply(thing)), thing);
    }
  }
}
