package spanledger.jointdesign;

import java.util.List;
import java.util.function.Function;
import spanledger.joint.sharing.FaceForces;
import spanledger.joint.sharing.FaceMovement;
import spanledger.resistance.member.Working;

/**
 * A solver between the runs of a joint: it takes the forces on a face from one run, and others are
 * given the movements of the face that it finds.
 *
 * @param where the joint and the face, as in {@link FaceSharing#moved}
 * @param forces the run with the forces on the face
 * @param solver what moves the face how far
 */
record SolvedFace(String where, Working forces, Function<FaceForces, FaceMovement> solver) {

  static final List<String> FORCES = List.of("N", "V_y", "V_z", "T", "M_y", "M_z");
}
