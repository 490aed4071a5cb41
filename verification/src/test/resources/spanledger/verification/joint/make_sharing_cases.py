"""Makes sharing-cases.json beside it: sharing of joint forces, stiffness of joints and tests of joints, worked out apart.

Published values are typed in with their source. All others are worked out here by another way than the
program's: closed forms, the centre of turning by root finding in the plane instead of secant stiffness,
fits by a simplex search instead of Levenberg and Marquardt, quantiles of scipy. Needs numpy and scipy.
Run: python3 make_sharing_cases.py
"""
import json
import math
import os

import numpy as np
from scipy import optimize, stats

cases = []
MEMORY = "from memory, confirm"
DERIVED = "derived from mechanics"
EXACT = "closed form; both sides in double precision"
ITERATED = "root found apart to twelve digits; the program's residual is below 1e-9"


def case(id, kind, description, given, expected, work, place="", confidence=DERIVED):
    cases.append({
        "id": id, "kind": kind, "description": description, "given": given,
        "source": {"work": work, "place": place, "confidence": confidence},
        "expected": [{"what": w, "value": v, "tolerance": t, "toleranceReason": r} for (w, v, t, r) in expected]})


def exact(what, value, relative=1e-9):
    return (what, value, max(abs(value) * relative, 1e-9), EXACT)


def bolts(*places, k=(1, 1, 1)):
    return [[chr(65 + i), y, z, *k] for i, (y, z) in enumerate(places)]


def joint(bolts, forces, keys=(), contacts=(), bed=None, sharing="BY_STIFFNESS"):
    given = {"bolts": bolts, "keys": list(keys), "contacts": list(contacts), "forces": list(forces),
             "keySharing": sharing}
    if bed:
        given["bed"] = bed
    return given


# ------------------------------------------------------------------ shear and twist of bolts: published examples
MACHINE_ELEMENTS = "V. B. Bhandari, Design of Machine Elements (input and way of working read in a published copy)"
case("machine-elements-7.3", "sharing", "Four bolts 200 by 150, 10 kN at 500 mm",
     joint(bolts((-100, 75), (100, 75), (100, -75), (-100, -75)), (0, 0, -10000, -10000 * 500, 0, 0)),
     [exact("shear B", math.hypot(8000 + 2500, 6000)), exact("shear C", math.hypot(10500, 6000)),
      exact("shear A", math.hypot(5500, 6000)), exact("greatest shear", 12093.386622447824)],
     MACHINE_ELEMENTS, "Example 7.3: secondary force 10000 N, primary 2500 N, cosine 0.8", "published")
case("machine-elements-7.4", "sharing", "Three bolts in a line 75 apart, 5 kN at 305 mm from the middle one",
     joint(bolts((-75, 0), (0, 0), (75, 0)), (0, 0, -5000, -5000 * 305, 0, 0)),
     [exact("shear C", 5000 / 3 + 5000 * 305 * 75 / (2 * 75 ** 2)), exact("shear B", 5000 / 3),
      exact("shear A", 5000 * 305 * 75 / (2 * 75 ** 2) - 5000 / 3)],
     MACHINE_ELEMENTS, "Example 7.4", "published")
case("shigley-bar", "sharing", "Bar on four bolts 150 by 120, 16 kN at 425 mm",
     joint(bolts((-75, 60), (75, 60), (75, -60), (-75, -60)), (0, 0, -16000, -16000 * 425, 0, 0)),
     [("shear B", 21000, 50, "printed with three figures"), ("shear C", 21000, 50, "printed with three figures"),
      ("shear A", 14800, 50, "printed with three figures"), ("shear D", 14800, 50, "printed with three figures")],
     "J. E. Shigley and C. R. Mischke, Mechanical Engineering Design", "example of a bar on four bolts in eccentric shear",
     MEMORY)
# published: the area follows from the greatest shear stress; the tension from the area
area = 98.022213
tension = 2 * math.sqrt((area * 76) ** 2 - 6250 ** 2)
case("machine-elements-7.5", "sharing", "Wall bracket on bolts 25 and 150 mm above its heel, 25 kN at 100 mm",
     joint(bolts((-40, 150), (40, 150), (-40, 25), (40, 25), k=(1, 1, 1)), (0, 0, -25000, 0, 25000 * 100, 0),
           contacts=[["heel left", -60, 0, 1e5], ["heel right", 60, 0, 1e5]]),
     [("tension A", tension, 1, "printed area has eight figures; the heel gives about 1e-5 of what a bolt does"),
      ("tension C", 25000 * 100 * 25 / (2 * (150 ** 2 + 25 ** 2)), 1, "the heel gives about 1e-5 of what a bolt does"),
      exact("shear A", 6250), ("contact", 2 * tension * (1 + 25 / 150), 3, "as for the tension")],
     MACHINE_ELEMENTS, "Example 7.5: area 98.022213 mm² at a permissible shear of 76 MPa", "published")

# ------------------------------------------------------------------ shear and twist of bolts: closed forms
for n in (3, 5, 8):
    ring = [(50 * math.cos(2 * math.pi * i / n + .3), 50 * math.sin(2 * math.pi * i / n + .3)) for i in range(n)]
    case(f"ring-{n}", "sharing", f"Ring of {n} bolts of radius 50 mm, twisted",
         joint(bolts(*ring), (0, 0, 0, 300000, 0, 0)),
         [exact("shear A", 300000 / (n * 50)), exact("greatest shear", 300000 / (n * 50)),
          exact("turn x", 300000 / (n * 2500))], "Equal shears square to the radius")
for n, pitch in ((2, 60), (4, 70), (7, 45)):
    line = [(0, (i - (n - 1) / 2) * pitch) for i in range(n)]
    case(f"line-{n}", "sharing", f"Line of {n} bolts {pitch} mm apart, twisted",
         joint(bolts(*line), (0, 0, 0, 1e6, 0, 0)),
         [exact("shear A", 6e6 / (n * (n + 1) * pitch))], "6M/(n(n+1)p), textbook formula of a line of bolts")
case("unlike-bolts", "sharing", "Two bolts of which one is three times as stiff, pulled at the middle",
     joint([["A", -40, 0, 1, 1, 1], ["B", 40, 0, 3, 3, 3]], (0, 0, 4000, 4000 * 20, 0, 0)),
     [exact("shear A", 1000), exact("shear B", 3000), exact("turn x", 0)],
     "A force through the stiffness centre at y = 20 mm only shifts")
case("slot-bolts", "sharing", "Bolts that hold only across a slot along z: the couple of shears carries the twist",
     joint(bolts((0, -35), (0, 35), k=(1000, 0, 1000)), (0, 2000, 0, 140000, 0, 0)),
     [exact("shear A", 1000 + 2000), exact("shear B", 2000 - 1000), exact("shearY A", 3000), exact("shearY B", -1000)],
     "Statics of two bolts")
case("reference-point", "sharing", "The same ring with its forces given about another point",
     joint(bolts((120, 80), (20, 80), (20, -20), (120, -20)), (0, 0, 1000, 1000 * 70 + 50000, 0, 0)),
     [exact("shearY A", -50000 / 20000 * 50), exact("shearZ A", 250 + 50000 / 20000 * 50)],
     "Moment of the shear about the middle of the group at 70, 30")

# ------------------------------------------------------------------ pull and bending
case("pull-and-bending", "sharing", "Four bolts that all stay in tension",
     joint(bolts((-30, 40), (30, 40), (30, -40), (-30, -40)), (8000, 0, 0, 0, 120000, 60000)),
     [exact("tension A", 2000 + 750 + 500), exact("tension B", 2000 + 750 - 500),
      exact("tension C", 2000 - 750 - 500), exact("tension D", 2000 - 750 + 500)], "N/n ± M c/Σc²")
for rows in ((60, 160), (50, 120, 190)):
    total = sum(z * z for z in rows)
    pts = [p for z in rows for p in ((-25, z), (25, z))]
    case(f"heel-{len(rows)}", "sharing", "Bolt rows over a hard heel: tensions grow with the distance from it",
         joint(bolts(*pts), (0, 0, 0, 0, 2e6, 0), contacts=[["left", -40, 0, 1e5], ["right", 40, 0, 1e5]]),
         [("tension " + chr(65 + 2 * i), 2e6 * z / (2 * total), 1e-4 * 2e6 * z / (2 * total),
           "the heel gives about 1e-5 of what a bolt does") for i, z in enumerate(rows)]
         + [("contact", 2e6 * sum(rows) / total, 1e-4 * 2e6, "as for the tensions")],
         "M z/Σz² about the heel")
case("heel-turns-over", "sharing", "The same joint bent the other way turns about its upper edge",
     joint(bolts((-25, 40), (25, 40), (-25, 160), (25, 160)), (0, 0, 0, 0, -1e6, 0),
           contacts=[["a", -40, 0, 1e5], ["b", 40, 0, 1e5], ["c", -40, 200, 1e5], ["d", 40, 200, 1e5]]),
     [("tension A", 1e6 * 160 / (2 * (160 ** 2 + 40 ** 2)), 1, "the heel gives about 1e-5 of what a bolt does"),
      ("tension C", 1e6 * 40 / (2 * (160 ** 2 + 40 ** 2)), 1, "as for the other row"),
      exact("contact a", 0), exact("contact b", 0)], "M d/Σd² about the upper edge")
width, height, bedding, kt, cover = 100.0, 200.0, 20.0, 100000.0, 40.0
depth = height - cover
k2 = 2 * kt
x = (-k2 + math.sqrt(k2 ** 2 + 2 * width * bedding * k2 * depth)) / (width * bedding)
pull = 3e6 / (depth - x / 3)
STRIPS = "the bed is in 200 strips; the neutral axis is found within one"
case("bed-bending", "sharing", "Plate on an elastic bed with one row of two bolts: depth of the pressed zone",
     joint([["A", -30, height / 2 - cover, 0, 0, kt], ["B", 30, height / 2 - cover, 0, 0, kt]], (0, 0, 0, 0, 3e6, 0),
           bed=[0, 0, width, height, 1, 200, bedding]),
     [("tension A", pull / 2, pull * 5e-5, STRIPS), ("tension B", pull / 2, pull * 5e-5, STRIPS),
      ("contact", pull, pull * 1e-4, STRIPS), ("neutral axis", x, 0.02, STRIPS)],
     "Cracked section of one material that only presses: b c x²/2 = 2k(d − x)")
case("bed-pressed", "sharing", "Plate pressed within its kern: no bolt is pulled",
     joint([["A", 0, 90, 0, 0, kt], ["B", 0, -90, 0, 0, kt]], (-40000, 0, 0, 0, 40000 * 20, 0),
           bed=[0, 0, width, height, 1, 200, bedding]),
     [exact("tension A", 0), exact("tension B", 0), ("contact", 40000, 1e-4, EXACT)],
     "Eccentricity 20 mm is less than a sixth of 200 mm")
case("bed-gaping", "sharing", "Plate pressed outside its kern, bolts on the pressed side: pressed length 3(h/2 − e)",
     joint([["A", 0, -90, 0, 0, kt]], (-40000, 0, 0, 0, 40000 * 50, 0), bed=[0, 0, width, height, 1, 200, bedding]),
     [exact("tension A", 0), ("contact", 40000, 1e-4, EXACT), ("neutral axis", 150, 0.05, STRIPS)],
     "Triangle of pressure under an eccentric load")

# ------------------------------------------------------------------ keys
key = lambda name, y, z, angle, length, gap, k: [name, y, z, angle, length, gap, k]
UP = math.pi / 2
free = bolts((0, -30), (0, 30), k=(0, 500, 1000))
case("key-across", "sharing", "A key in a slot along z takes all shear across it; bolts take what is along",
     joint(free, (0, 3000, 1200, 0, 0, 0), keys=[key("K", 0, 0, UP, 60, 0, 1e5)]),
     [exact("key K first", -1500), exact("key K second", -1500), exact("key K shearY", 3000),
      exact("shearZ A", 600), exact("shearY A", 0), exact("key K bearing", 2)], "Statics")
case("key-twist", "sharing", "A key alone under twist jams on both flanks, L/√3 apart",
     joint(free, (0, 0, 0, 90000, 0, 0), keys=[key("K", 0, 0, UP, 60, 0, 1e5)]),
     [exact("key K first", -90000 / (60 / math.sqrt(3))), exact("key K second", 90000 / (60 / math.sqrt(3))),
      exact("key K twist", 90000), exact("key K bearing", 3)], "Couple of two bearing points")
case("keys-couple", "sharing", "Two teeth carry twist as a couple",
     joint(free, (0, 0, 0, 90000, 0, 0),
           keys=[key("lower", 0, -50, UP, 0, 0, 1e5), key("upper", 0, 50, UP, 0, 0, 1e5)]),
     [exact("key lower shearY", 900), exact("key upper shearY", -900)], "T/(2a)")
case("key-and-bolts", "sharing", "Key and bolts share by stiffness",
     joint(bolts((0, -30), (0, 30), k=(2000, 2000, 1000)), (0, 3000, 0, 0, 0, 0),
           keys=[key("K", 0, 0, UP, 0, 0, 8000)]),
     [exact("key K shearY", 3000 * 8 / 12), exact("shearY A", 3000 * 2 / 12), exact("shift y", 3000 / 12000)],
     "Springs side by side")
case("key-with-clearance", "sharing", "Bolts carry alone until the clearance of 0.2 mm is used up",
     joint(bolts((0, -30), (0, 30), k=(2000, 2000, 1000)), (0, 3000, 0, 0, 0, 0),
           keys=[key("K", 0, 0, UP, 0, 0.2, 8000)]),
     [exact("shift y", (3000 + 1600) / 12000), exact("key K shearY", 8000 * (4600 / 12000 - 0.2)),
      exact("shearY A", 2000 * 4600 / 12000)], "2·2000u + 8000(u − 0.2) = 3000")
case("key-not-reached", "sharing", "A key whose clearance is not used up carries nothing",
     joint(bolts((0, -30), (0, 30), k=(2000, 2000, 1000)), (0, 700, 0, 0, 0, 0),
           keys=[key("K", 0, 0, UP, 0, 0.2, 8000)]),
     [exact("key K shearY", 0), exact("shearY A", 350), exact("key K bearing", 0)], "700/4000 = 0.175 mm")
case("keys-carry-across", "sharing", "Keys stated to carry across, bolts of unlike stiffness the rest along the slots",
     joint([["A", 0, -40, 5000, 1000, 1], ["B", 10, 40, 5000, 3000, 1]], (0, 2400, 800, 60000, 0, 0),
           keys=[key("lower", 0, -50, UP, 0, 0, 1e5), key("upper", 0, 50, UP, 0, 0, 1e5)], sharing="KEYS_CARRY_ACROSS"),
     [exact("shearY A", 0), exact("shearZ A", 200), exact("shearZ B", 600),
      exact("key lower shearY", 1200 + (60000 - 600 * 10) / 100),
      exact("key upper shearY", 1200 - (60000 - 600 * 10) / 100)], "Statics; bolts by k_z = 1000 and 3000")
case("crossed-keys", "sharing", "Keys in two directions stated to carry all: none is left to the bolts",
     joint(free, (0, 2000, 1500, 0, 0, 0),
           keys=[key("one", 0, 0, UP, 40, 0, 1e5), key("other", 0, 0, 0, 40, 0, 1e5)], sharing="KEYS_CARRY_ACROSS"),
     [exact("key one shearY", 2000), exact("key other shearZ", 1500), exact("greatest shear", 0)], "Statics")


# ------------------------------------------------------------------ instantaneous centre
def law(r, most, deformation=0.34, rate=10.0, exponent=0.55):
    return (1 - np.exp(-rate * deformation * r / most)) ** exponent


def strength(points, vy, vz, t):
    """Shear strength each bolt needs, by a root of two equations for the place of the centre."""
    pts = np.array(points, float)
    f = np.array([vy, vz, t], float)
    length = np.max(np.hypot(*pts.T)) or 1.0
    f[2] /= length

    def carried(c, sense):
        d = pts - c
        r = np.hypot(*d.T)
        rho = law(r, r.max())
        ry, rz = -sense * rho * d[:, 1] / r, sense * rho * d[:, 0] / r
        return np.array([ry.sum(), rz.sum(), (pts[:, 0] * rz - pts[:, 1] * ry).sum() / length])

    across = np.linalg.svd(f.reshape(1, 3))[2][1:]
    best = None
    for sense in (1, -1):
        for y in (-6.01, -2.03, -0.71, -0.13, 0.33, 1.07, 3.1):
            for z in (-3.03, -0.9, -0.31, 0.0101, 0.4, 1.1, 2.7):
                def two(c):
                    w = carried(c * length, sense)
                    return across @ w / np.linalg.norm(w)
                found = optimize.root(two, (y, z), tol=1e-14)
                w = carried(found.x * length, sense)
                if np.linalg.norm(two(found.x)) < 1e-11 and w @ f > 0:
                    return np.linalg.norm(f) / np.linalg.norm(w)
    assert best, "no centre"
    return best


def column(n, pitch):
    return [(0, (i - (n - 1) / 2) * pitch) for i in range(n)]


# Coefficients C of the Manual: vertical load at an eccentricity, one vertical row, 3 in pitch.
TABLE = {(2, 2): 1.18, (2, 3): 2.23, (2, 4): 3.32, (2, 5): 4.39, (2, 6): 5.45,
         (3, 2): 0.88, (3, 3): 1.75, (3, 4): 2.81, (3, 5): 3.90, (3, 6): 4.98,
         (4, 2): 0.69, (4, 3): 1.40, (4, 4): 2.36, (4, 5): 3.40, (4, 6): 4.47,
         (5, 2): 0.56, (5, 3): 1.15, (5, 4): 2.01, (5, 5): 2.96, (5, 6): 3.98,
         (6, 2): 0.48, (6, 3): 0.97, (6, 4): 1.73, (6, 5): 2.59, (6, 6): 3.55,
         (8, 2): 0.36, (8, 3): 0.73, (8, 4): 1.34, (8, 5): 2.04, (8, 6): 2.85}
for (e, n), c in TABLE.items():
    given = joint(bolts(*[(25.4 * y, 25.4 * z) for y, z in column(n, 3)]), (0, 0, -1000, -1000 * 25.4 * e, 0, 0))
    case(f"manual-C-{n}-at-{e}", "centre", f"{n} bolts in a row 3 in apart, load {e} in off",
         given, [("coefficient", c, 0.0075, "table in two decimals; some entries are cut, not rounded")],
         "AISC Steel Construction Manual", "Table of C for one vertical row, s = 3 in, angle 0", MEMORY)
for n, e in ((3, 5), (4, 10), (6, 6), (9, 16)):
    case(f"row-C-{n}-at-{e}", "centre", f"{n} bolts in a row 3 in apart, load {e} in off, to all digits",
         joint(bolts(*[(25.4 * y, 25.4 * z) for y, z in column(n, 3)]), (0, 0, -1000, -1000 * 25.4 * e, 0, 0)),
         [("coefficient", 1 / strength(column(n, 3), 0, -1, -e), 1e-8, ITERATED)], "Centre found apart")
GROUPS = {"block": [(-40, -60), (40, -60), (-40, 0), (40, 0), (-40, 60), (40, 60)],
          "lopsided": [(0, 0), (70, 10), (15, 90), (60, 120), (-30, 50)]}
for name, pts in GROUPS.items():
    for vy, vz, t in ((0.3, -1, -120), (1, 0.5, 300), (-0.8, 0.2, 35)):
        case(f"{name}-{vy}-{vz}-{t}", "centre", "Slanting load: the centre lies anywhere in the plane",
             joint(bolts(*pts), (0, 1000 * vy, 1000 * vz, 1000 * t, 0, 0)),
             [("required strength", 1000 * strength(pts, vy, vz, t), 1e-5, ITERATED)], "Centre found apart")
case("ring-ultimate", "centre", "Ring of bolts twisted: all reach the same shear",
     joint(bolts((50, 0), (0, 50), (-50, 0), (0, -50)), (0, 0, 0, 200000, 0, 0)),
     [exact("required strength", 1000 / (1 - math.exp(-3.4)) ** 0.55, 1e-8), exact("shear A", 1000, 1e-8)],
     "T/(4R) per R_ult(1 − e^−3.4)^0.55")
case("concentric-ultimate", "centre", "Load through the middle of a symmetric group: all bolts alike",
     joint(bolts(*GROUPS["block"]), (0, 600, 0, 0, 0, 0)),
     [exact("shear A", 100, 1e-8), exact("coefficient", 6 * (1 - math.exp(-3.4)) ** 0.55, 1e-8)], "Symmetry")

# ------------------------------------------------------------------ prying and slip
THORNTON = "W. A. Thornton, Prying action, a general treatment, Engineering Journal AISC 22 (1985), equilibrium of the flange"
m, n, mp, bolt = 30.0, 35.0, 450000.0, 40000.0
second = (mp + n * bolt) / (m + n)
proc = lambda name, **inputs: {"procedure": name, "inputs": inputs}
stub = lambda pull: proc("joint-t-stub", F=pull, t=10, m=m, n=n, l_1=100, l_2=100, f_od=180, h_s=1, k_o=0.9, F_t_Rd=bolt)
case("prying-mode-2", "procedure", "At the resistance of T-stub mode 2b the bolt with prying is just used up",
     stub(second), [exact("Q", (second * m - mp) / n), exact("F_t", bolt), exact("F_2b", second)],
     THORNTON + "; EN 1993-1-8 Table 6.2, mode 2", "", "published")
case("prying-mode-1", "procedure", "At the resistance of T-stub mode 1 the couple at the edge is a second hinge",
     stub(2 * mp / m), [exact("Q", mp / n), exact("F_1", 2 * mp / m)], "EN 1993-1-8 Table 6.2, mode 1", "", MEMORY)
case("prying-none", "procedure", "A plate strong enough at its root does not pry",
     stub(14000), [exact("Q", 0), exact("F_t", 14000)], THORNTON, "", "published")
grip = lambda v, t, p, mu, faces, gamma: proc("joint-en1999-slip", V=v, F_p=p, F_t=t, n_b=1, n_f=faces, μ=mu, k_t=0.8, φ_s=1, γ_s=gamma)
case("grip", "procedure", "Slip at a bolt in shear and tension", grip(800, 2000, 6000, 0.2, 1, 1.1),
     [exact("F_c", 4400), exact("F_s_Rd", 800)], "EN 1993-1-8 3.9.2: (F_p − 0.8 F_t) μ/γ", "", MEMORY)
case("grip-lost", "procedure", "A bolt pulled beyond its preload grips nothing", grip(10, 9000, 6000, 0.2, 2, 1.25),
     [exact("F_c", 0), exact("F_s_Rd", 0)], "EN 1993-1-8 3.9.2", "", MEMORY)
ring = bolts((50, 0), (0, 50), (-50, 0), (0, -50), k=(0, 1000, 1000))
case("before-slip", "sharing", "Before slip all bolts of a ring hold alike, also along the slot, and the key is idle",
     joint(ring, (0, 0, 400, 180000, 0, 0), keys=[key("K", 0, 0, UP, 60, 0, 1e5)], sharing="BEFORE_SLIP"),
     [exact("shear A", 180000 / 200 + 100), exact("shearY B", -900), exact("shear C", 800),
      exact("key K bearing", 0), exact("key K shearY", 0)], "T/(4R) and V/4")

# ------------------------------------------------------------------ springs of the parts
case("bolt-stretch", "procedure", "M12 bolt, half of k10 of a row",
     proc("bolt-stretch", E=210000, A_s=84.3, L_b=42),
     [exact("k_b", 210000 * 1.6 * 84.3 / 42 / 2)], "EN 1993-1-8 Table 6.11, k10 = 1.6 A_s/L_b", "", MEMORY)
case("plate-bending", "procedure", "Aluminium leg, half of k5 of a row",
     proc("plate-bending", E=70000, l_eff=120, t=8, m=25),
     [exact("k_p", 70000 * 0.9 * 120 * 512 / 15625 / 2)], "EN 1993-1-8 Table 6.11, k5 = 0.9 l_eff t³/m³", "", MEMORY)
inertia = 30 * 4 ** 3 / 12
lip = 6 ** 3 / (3 * 70000 * inertia) + 1.2 * 6 / (27000 * 30 * 4)
case("lip-bending", "procedure", "Two lips as cantilevers", proc("lip-bending", E=70000, G=27000, a=6, t=4, b_e=30),
     [exact("k_l", 2 / lip)], "F a³/(3EI) + 1.2 F a/(GA)")
fine = np.linspace(0, 10, 20001)
inertia = 40 * 8 ** 3 / 12
bent = fine ** 2 * (6 * 100 - 4 * 10 * fine + fine ** 2) / (24 * 70000 * inertia) / 10
sheared = 1.2 * (10 * fine - fine ** 2 / 2) / (27000 * 320) / 10
case("key-tooth", "procedure", "A key under pressure spread over its depth, mean deflection added up apart",
     proc("key-tooth", E=70000, G=27000, l=40, b=8, h=10),
     [("k_k", 1 / np.trapezoid(bent + sheared, fine) * 10, 1.0, "sum over 20000 strips; k is 1.8e6")],
     "Cantilever under even load, Bernoulli deflection line, and shear")
kv = 8 * 12 ** 2 * 800 / 16
kb = lambda e, p, t, fu: 12 * min(0.25 * e / 12 + 0.5, 0.25 * p / 12 + 0.375, 1.25) * min(1.5 * t / 16, 2.5) * 12 * fu
case("bolt-shearing", "procedure", "M12 bolt 8.8 in two aluminium plies",
     proc("bolt-shearing", d=12, f_ub=800, d_M16=16, e_b1=24, p_b1=40, t_1=6, f_u1=245, e_b2=60, p_b2=1e6, t_2=30, f_u2=290),
     [exact("k_v", kv), exact("k_br1", kb(24, 40, 6, 245)), exact("k_br2", kb(60, 1e6, 30, 290)),
      exact("k_s", 1 / (1 / kv + 1 / kb(24, 40, 6, 245) + 1 / kb(60, 1e6, 30, 290)))],
     "EN 1993-1-8 Table 6.11: k11 = 16 n d² f_ub/(E d_M16), k12 = 24 n k_b k_t d f_u/E", "", MEMORY)

# ------------------------------------------------------------------ stiffness and resistance of a joint
kt, kc, z = 80000.0, 500000.0, 120.0
row = [["A", -30, z, 5000, 5000, kt], ["B", 30, z, 5000, 5000, kt]]
case("one-row", "stiffness", "One row of two bolts over a heel: E z²/Σ(1/k)",
     {**joint(row, (0, 0, 0, 0, 1e6, 0), contacts=[["heel", 0, 0, kc], ["top", 0, 2 * z, kc]]), "modification": 2, "limits": [20000, 9000, 1e99, 1e99]},
     [exact("about 2 upper", z * z / (1 / (2 * kt) + 1 / kc)), exact("about 2 lower", z * z / (1 / (2 * kt) + 1 / kc) / 2),
      exact("about 1 upper", 5000 * 2 * 30 ** 2 - 0),
      exact("resistance factor", 2 * 20000 * z / 1e6)],
     "EN 1993-1-8 6.3.1(4): S = E z²/Σ(1/k_i); η = 2", "", MEMORY)
rows = (60.0, 160.0)
pts = [[chr(65 + 2 * i + j), y, r, 1, 1, kt] for i, r in enumerate(rows) for j, y in enumerate((-25, 25))]
case("two-rows", "stiffness", "Two rows over a hard heel: Σ k z²; the outer row governs",
     {**joint(pts, (0, 0, 0, 0, 1e6, 0), contacts=[["l", -40, 0, 8e9], ["r", 40, 0, 8e9], ["m", -40, 220, 8e9], ["n", 40, 220, 8e9]]), "modification": 3,
      "limits": [20000, 1e99, 1e99, 1e99]},
     [("about 2 upper", 2 * kt * sum(r * r for r in rows), 3e5, "the heel gives about 1e-5 of what a bolt does"),
      ("resistance factor", 2 * 20000 * sum(r * r for r in rows) / rows[1] / 1e6, 1e-4, "as for the stiffness")],
     "Springs on a lever")
case("keys-stiff", "stiffness", "Keys turn as a couple; clearance is play, not softness",
     {**joint(free, (0, 2000, 0, 0, 0, 0), keys=[key("lower", 0, -50, UP, 0, 0.3, 1e5), key("upper", 0, 50, UP, 0, 0.3, 1e5)]),
      "modification": 1, "limits": [1e99, 1e99, 750, 1e99]},
     [exact("along 2 upper", 2e5), exact("about 1 upper", 2e5 * 2500), exact("along 3 upper", 1000),
      exact("resistance factor", 1.5)], "k, k a²; each half of a key carries a quarter of the shear")

# ------------------------------------------------------------------ test curves
def lines(p, rotation):
    value = np.maximum(0, p[1] * (rotation - p[0]))
    return np.minimum(value, p[2]) if len(p) > 2 else value


def curve(rotation, moment):
    return {"rotations": [float(r) for r in rotation], "moments": [float(m) for m in moment]}


rotation = np.array([0, 2, 4, 6, 8, 10, 14, 18, 22, 26, 30]) / 1000
case("lines-exact", "curve", "Readings on three straight lines", curve(rotation, lines((0.003, 8e7, 1.2e6), rotation)),
     [exact("play", 0.003, 1e-7), exact("stiffness", 8e7, 1e-7), exact("plastic", 1.2e6, 1e-7),
      ("scatter", 0, 1, "rounding of readings of 1.2e6"),
      ("secant at 400000", 400000 / 0.008, 1, EXACT)], "The lines themselves")
case("no-play", "curve", "Readings on one line through the origin", curve(rotation, 5e7 * rotation),
     [("play", 0, 1e-9, EXACT), exact("stiffness", 5e7, 1e-7), ("plastic", -1, 0, "none is found")], "The line itself")
rng = np.random.default_rng(6)
for name, p in (("with-play", (0.0042, 6.1e7, 9.3e5)), ("stiff", (0.0011, 1.4e8, 1.6e6)), ("rising", (0.006, 5e7))):
    rotation = np.linspace(0.0005, 0.028 if len(p) > 2 else 0.02, 40)
    top = p[2] if len(p) > 2 else lines(p, rotation)[-1]
    moment = np.round(lines(p, rotation) + rng.normal(0, 0.01 * top, 40))
    unit = np.array([0.01, 1e8, 1e5])[:len(p)]
    best = min((optimize.minimize(lambda q: np.sum((lines(np.abs(q) * unit, rotation) - moment) ** 2) / 1e10,
                                  np.array(p) / unit * factor, method="Nelder-Mead",
                                  options={"xatol": 1e-12, "fatol": 1e-16, "maxiter": 20000, "maxfev": 20000})
                for factor in (1, 0.9, 1.1)), key=lambda r: r.fun)
    q = np.abs(best.x) * unit
    FIT = "least squares found apart by a simplex search"
    case("fit-" + name, "curve", "Readings with scatter", curve(rotation, moment),
         [("play", q[0], 1e-6 * q[0], FIT), ("stiffness", q[1], 1e-6 * q[1], FIT)]
         + ([("plastic", q[2], 1e-6 * q[2], FIT)] if len(q) > 2 else [("plastic", -1, 0, "none is found")]),
         "Least squares found apart; readings made up with a fixed seed")

# ------------------------------------------------------------------ characteristic values
EN1990 = "EN 1990:2002"
five = [10.2, 9.6, 10.8, 10.0, 9.4]
K = "the table gives k_n in two decimals and rounds 8 and 20 specimens down by up to 0.012"
for n, k in ((3, 3.37), (4, 2.63), (5, 2.33), (6, 2.18), (8, 2.00), (10, 1.92), (20, 1.76), (30, 1.73)):
    case(f"k-unknown-{n}", "quantile", f"k_n of {n} specimens, scatter unknown", {"n": n, "known": False},
         [("k_n", k, 0.013, K), exact("k_n", stats.t.ppf(0.95, n - 1) * math.sqrt(1 + 1 / n))], EN1990, "Table D.1", MEMORY)
for n, k in ((1, 2.31), (2, 2.01), (3, 1.89), (5, 1.80), (10, 1.72), (30, 1.67)):
    case(f"k-known-{n}", "quantile", f"k_n of {n} specimens, scatter known", {"n": n, "known": True},
         [("k_n", k, 0.022, "the table gives k_n in two decimals; for one specimen 2.31, the formula 2.326"),
          exact("k_n", stats.norm.ppf(0.95) * math.sqrt(1 + 1 / n))], EN1990, "Table D.1", MEMORY)
k5 = stats.t.ppf(0.95, 4) * math.sqrt(1.2)
FLOOR = "a coefficient of variation estimated from the specimens is taken as 0.10 at least"
root = math.sqrt(math.log(1.01))
wide = [10.4, 8.6, 12.8, 10.0, 8.2]
mean, s = np.mean(wide), np.std(wide, ddof=1)
case("wide-normal", "property", "Five specimens, normal", {"values": wide, "positive": False},
     [exact("mean", 10.0), exact("variation", s / mean), exact("lower", mean - k5 * s), exact("upper", mean + k5 * s),
      ("lower", 5.767, 0.01, "worked by hand with k_n of the table, 2.33, and s = 1.8166")], EN1990, "D.7.2(2)", MEMORY)
logs = np.log(wide)
case("wide-log-normal", "property", "Five specimens, log-normal", {"values": wide, "positive": True},
     [exact("lower", math.exp(logs.mean() - k5 * logs.std(ddof=1))), exact("upper", math.exp(logs.mean() + k5 * logs.std(ddof=1)))],
     EN1990, "D.7.2(6)", MEMORY)
logs = np.log(five)
case("five-normal", "property", "Five specimens alike, normal: " + FLOOR, {"values": five, "positive": False},
     [exact("mean", 10.0), exact("variation", np.std(five, ddof=1) / 10), exact("lower", 10 - k5), exact("upper", 10 + k5),
      ("lower", 7.67, 0.01, "worked by hand with k_n of the table, 2.33, and s = 1")], EN1990, "D.7.1(5), note; D.7.2(2)", MEMORY)
case("five-log-normal", "property", "Five specimens alike, log-normal: " + FLOOR, {"values": five, "positive": True},
     [exact("lower", math.exp(logs.mean() - k5 * root)), exact("upper", math.exp(logs.mean() + k5 * root)),
      ("lower", 7.916, 0.005, "worked by hand with k_n of the table, 2.33")], EN1990, "D.7.1(5), note; D.7.2(6)", MEMORY)
case("two-known", "property", "Two specimens, scatter known to be 10 %", {"values": [9.0, 11.0], "positive": False, "known": 0.1},
     [exact("lower", 10 - stats.norm.ppf(0.95) * math.sqrt(1.5))], EN1990, "D.7.2(2)", MEMORY)
case("one-known", "property", "One specimen, scatter known to be 6 %, log-normal", {"values": [12.0], "positive": True, "known": 0.06},
     [exact("lower", 12 * math.exp(-stats.norm.ppf(0.95) * math.sqrt(2) * math.sqrt(math.log(1.0036)))),
      ("lower", 10.45, 0.02, "worked by hand with k_n of the table, 2.31: 12 exp(-0.1386)")], EN1990, "D.7.2(6)", MEMORY)

with open(os.path.join(os.path.dirname(os.path.abspath(__file__)), "sharing-cases.json"), "w") as out:
    out.write('{"cases": [\n' + ",\n".join(json.dumps(c, ensure_ascii=False) for c in cases) + "\n]}\n")
print(len(cases), "cases,", sum(len(c["expected"]) for c in cases), "values")
