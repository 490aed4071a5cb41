package spanledger.resistance.member;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import spanledger.action.Figure;

/**
 * The figures of a member code that nations or committees may set otherwise: partial factors,
 * imperfection factors, limits.
 *
 * @param id short name, for example {@code en-1999-1-1}
 * @param title the standard they are from
 * @param figures by id
 * @param replaced the published figures in whose place others stand, by id
 * @param format the format of safety that its resistances belong to, see {@link
 *     spanledger.action.CombinationSet#format}; empty if it does not say
 */
public record CodeFigures(
    String id,
    String title,
    Map<String, Figure> figures,
    Map<String, Figure> replaced,
    Optional<String> format) {

  public CodeFigures {
    figures = Map.copyOf(figures);
    replaced = Map.copyOf(replaced);
  }

  /** Figures as they were published. */
  public CodeFigures(
      String id, String title, Map<String, Figure> figures, Optional<String> format) {
    this(id, title, figures, Map.of(), format);
  }

  /** Figures that do not say their format. */
  public CodeFigures(String id, String title, Map<String, Figure> figures) {
    this(id, title, figures, Optional.empty());
  }

  /**
   * A figure.
   *
   * @throws IllegalArgumentException if this set lacks it
   */
  public Figure figure(String figureId) {
    Figure found = figures.get(figureId);
    if (found == null) {
      throw new IllegalArgumentException("Figures " + id + " have no " + figureId + ".");
    }
    return found;
  }

  /** A figure on its way into a calculation; one in place of another says so. */
  public Figured figured(String figureId) {
    Figure figure = figure(figureId);
    Figure before = replaced.get(figureId);
    String instead = before == null ? "" : ", in place of " + before.text() + " of the code";
    return new Figured(figure.value(), id + ", " + figureId + instead, figure.source());
  }

  /** The figures in order of their ids. */
  public List<Figure> inOrder() {
    return List.copyOf(new TreeMap<>(figures).values());
  }

  /** These figures with one replaced or added, as a national annex or a job may ask. */
  public CodeFigures with(Figure figure) {
    Map<String, Figure> changed = new TreeMap<>(figures);
    Figure before = changed.put(figure.id(), figure);
    Map<String, Figure> gone = new TreeMap<>(replaced);
    if (before != null) {
      gone.putIfAbsent(figure.id(), before);
    }
    return new CodeFigures(id, title, changed, gone, format);
  }
}
