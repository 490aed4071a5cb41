package spanledger.resistance.adm;

import java.util.List;
import spanledger.resistance.member.Feed;
import spanledger.resistance.member.Use;
import spanledger.resistance.member.Working;

/** What is judged by the Aluminum Design Manual. */
final class AdmUses {

  /** The utilisations of {@link CombinedStrength}. */
  static final List<Use> ALL =
      List.of(
          new Use("η_N", "axial force", "D, E"),
          new Use("η_My", "bending about y", "F"),
          new Use("η_Mz", "bending about z", "F"),
          new Use("η_Vy", "shear along y", "G"),
          new Use("η_Vz", "shear along z", "G"),
          new Use("η_T", "torsion", "H.2"),
          new Use("η_NM", "axial force and bending", "H.1"),
          new Use("η_NMVT", "axial force, bending, shear and torsion", "H.3"));

  private AdmUses() {}

  /** The least elastic buckling stress of compressed flanges that fed the bending of a side. */
  static Feed flange(Working bending) {
    int place =
        bending.procedure().procedure().inputs().stream()
            .map(input -> input.symbol().symbol())
            .toList()
            .indexOf("M_lb");
    if (bending.feeds().get(place) instanceof Feed.Result limit) {
      return limit.from().feed("F_e_fl");
    }
    throw new IllegalStateException("No element limits " + bending.label() + ".");
  }
}
