package spanledger.joint.sharing;

import java.util.List;

/**
 * What meets at a joint's face, in the face's axes.
 *
 * @param bolts that join the two parts
 * @param keys that bear in slots; may be empty
 * @param contacts where the parts press on each other; empty if nothing can press
 */
public record JointGeometry(
    List<BoltPlace> bolts, List<KeyPlace> keys, List<ContactPoint> contacts) {

  public JointGeometry {
    bolts = List.copyOf(bolts);
    keys = List.copyOf(keys);
    contacts = List.copyOf(contacts);
  }

  /** Bolts alone. */
  public static JointGeometry ofBolts(List<BoltPlace> bolts) {
    return new JointGeometry(bolts, List.of(), List.of());
  }

  /** The same with every key bearing at once: its clearance is used up. */
  public JointGeometry bearing() {
    List<KeyPlace> closed =
        keys.stream()
            .map(
                k ->
                    new KeyPlace(
                        k.name(), k.y(), k.z(), k.slotAngle(), k.length(), 0, k.stiffness()))
            .toList();
    return new JointGeometry(bolts, closed, contacts);
  }

  /** The greatest distance of anything from the reference point, mm; 1 if all is there. */
  double reach() {
    double reach = 0;
    for (BoltPlace bolt : bolts) {
      reach = Math.max(reach, Math.hypot(bolt.y(), bolt.z()));
    }
    for (KeyPlace key : keys) {
      reach = Math.max(reach, Math.hypot(key.y(), key.z()) + key.bearingArm());
    }
    for (ContactPoint contact : contacts) {
      reach = Math.max(reach, Math.hypot(contact.y(), contact.z()));
    }
    return reach > 0 ? reach : 1;
  }
}
