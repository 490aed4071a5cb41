package spanledger.analysis;

/**
 * Internal forces at a cut, with the signs of {@link SectionForces}.
 *
 * @param axial N, tension positive
 * @param shearY V_y, N
 * @param shearZ V_z, N
 * @param torque T, N·mm
 * @param momentY M_y, N·mm; positive if it stretches the fibres at +z
 * @param momentZ M_z, N·mm; positive if it stretches the fibres at -y
 */
public record InternalForces(
    double axial, double shearY, double shearZ, double torque, double momentY, double momentZ) {}
