#!/usr/bin/env python3
"""Writes the joint cases beside this file. Every expected value is worked out here from the formulas as the publications print them,
or copied from the work named; never from the program under test. Needs nothing but Python.
Run: python3 make_cases.py
"""
import json
import math
import pathlib

HERE = pathlib.Path(__file__).parent
PI = math.pi
SAME = "same formula worked out apart, rounding only"
EN = "EN 1999-1-1:2007, Table 8.5, from memory, in the form of EN 1993-1-8, Table 3.4; worked out apart"
CASES = []


def text(value, unit):
    return f"{value:.12g} {unit}".strip()


def case(ident, says, procedure, source, given, *expected):
    """An expected value: symbol, (value, unit) or number, relative tolerance, reason of the tolerance."""
    say = lambda v: text(*v) if isinstance(v, tuple) else text(v, "")
    CASES.append({"id": ident, "says": says, "procedure": "joint-" + procedure, "source": source,
                  "given": {k: say(v) for k, v in given.items()},
                  "expected": [{"symbol": e[0], "value": say(e[1]), "relative": e[2] if len(e) > 2 else 1e-9,
                                "reason": e[3] if len(e) > 3 else SAME} for e in expected]})


# Nominal sizes of ISO 261 and stress areas of ISO 898-1: d, pitch, A_s, hole
SIZES = {"M6": (6, 1.0, 20.1, 6.6), "M8": (8, 1.25, 36.6, 9), "M10": (10, 1.5, 58.0, 11), "M12": (12, 1.75, 84.3, 13.5),
         "M14": (14, 2, 115, 15.5), "M16": (16, 2, 157, 17.5), "M20": (20, 2.5, 245, 22)}
# tensile strength, shear per tensile strength in the thread
GRADES = {"8.8": (800, 0.6), "10.9": (1000, 0.5), "A2-50": (500, 0.5), "A4-70": (700, 0.5), "A4-80": (800, 0.5)}


def bolt_shear(size, grade, thread, planes, packing, length):
    d, _, a_s, _ = SIZES[size]
    fub, a_t = GRADES[grade]
    area = a_s if thread else PI * d * d / 4
    alpha = a_t if thread else 0.6
    b_lf = min(1, max(0.75, 1 - (length - 15 * d) / (200 * d)))
    b_p = min(1, 9 * d / (8 * d + 3 * packing)) if packing > d / 3 else 1
    one = alpha * fub * area / 1.25
    force = 5000
    case(f"shear {size} {grade} {'thread' if thread else 'shank'} x{planes}, packing {packing}, length {length}", "bolt in shear",
         "en1999-bolt-shear", EN,
         {"F_v": (force, "N"), "n": planes, "thread": int(thread), "t_p": (packing, "mm"), "L_j": (length, "mm"), "d": (d, "mm"),
          "A": (PI * d * d / 4, "mm2"), "A_s": (a_s, "mm2"), "f_ub": (fub, "MPa"), "α_s": 0.6, "α_t": a_t, "γ_M2": 1.25},
         ("β_Lf", b_lf), ("β_p", b_p), ("F_v_Rd", (planes * b_lf * b_p * one, "N")),
         ("η_v", force / (planes * b_lf * b_p * one)))


bolt_shear("M8", "A4-70", True, 1, 0, 0)
bolt_shear("M8", "8.8", False, 2, 0, 0)
bolt_shear("M12", "10.9", True, 1, 5, 0)
bolt_shear("M10", "A2-50", True, 1, 2, 400)
bolt_shear("M6", "8.8", True, 2, 3, 2000)
case("shear M20 8.8", "bolt in shear", "en1999-bolt-shear",
     "Design tables of steel building design in the United Kingdom for EN 1993-1-8, from memory, confirm: M20 of 8.8 has 94.1 kN",
     {"F_v": (1, "N"), "n": 1, "thread": 1, "t_p": (0, "mm"), "L_j": (0, "mm"), "d": (20, "mm"), "A": (314.159265359, "mm2"),
      "A_s": (245, "mm2"), "f_ub": (800, "MPa"), "α_s": 0.6, "α_t": 0.6, "γ_M2": 1.25},
     ("F_v_Rd", (94.1, "kN"), 6e-4, "printed to three digits"))


def tension(size, grade, k2, force):
    a_s = SIZES[size][2]
    fub = GRADES[grade][0]
    r = k2 * fub * a_s / 1.25
    case(f"tension {size} {grade}, k_2 {k2}", "bolt in tension", "en1999-bolt-tension", EN,
         {"F_t": (force, "N"), "A_s": (a_s, "mm2"), "f_ub": (fub, "MPa"), "k_2": k2, "γ_M2": 1.25},
         ("F_t_Rd", (r, "N")), ("η_t", force / r))


tension("M8", "A4-70", 0.9, 9000)
tension("M12", "8.8", 0.63, 12000)
ISO_LOADS = {"8.8": {"M6": 16.1, "M8": 29.2, "M10": 46.4, "M12": 67.4, "M14": 92.0, "M16": 125},
             "10.9": {"M6": 20.9, "M8": 38.1, "M10": 60.3, "M12": 87.7, "M14": 120, "M16": 163}}
for grade, loads in ISO_LOADS.items():
    for size, load in loads.items():
        fub = 800 if grade == "8.8" else 1040
        case(f"least ultimate load {size} {grade}", "bolt in tension without factors", "en1999-bolt-tension",
             "EN ISO 898-1, table of least ultimate loads, read in reproductions",
             {"F_t": (0, "N"), "A_s": (SIZES[size][2], "mm2"), "f_ub": (fub, "MPa"), "k_2": 1, "γ_M2": 1},
             ("F_t_Rd", (load, "kN"), 5e-3, "printed to three digits, M16 rounded down"))
case("shear and tension", "bolt in shear and tension", "en1999-bolt-both", EN,
     {"F_v": (4, "kN"), "F_v_Rd": (10, "kN"), "F_t": (7, "kN"), "F_t_Rd": (20, "kN")}, ("η_vt", 0.4 + 7 / 28))


def bearing(ident, size, fub, fu, t, e1, p1, e2, p2, k_h, force):
    d, _, _, d0 = SIZES[size]
    ahead = [fub / fu, 1.0] + ([e1 / (3 * d0)] if e1 else []) + ([p1 / (3 * d0) - 0.25] if p1 else [])
    side = [2.5] + ([2.8 * e2 / d0 - 1.7] if e2 else []) + ([1.4 * p2 / d0 - 1.7] if p2 else [])
    r = k_h * min(side) * min(ahead) * fu * d * t / 1.25
    case(f"bearing {ident}", "bolt on a plate", "en1999-bearing", EN,
         {"F_b": (force, "N"), "d": (d, "mm"), "t": (t, "mm"), "d_0": (d0, "mm"), "e_1": (e1, "mm"), "p_1": (p1, "mm"),
          "e_2": (e2, "mm"), "p_2": (p2, "mm"), "f_u": (fu, "MPa"), "f_ub": (fub, "MPa"), "k_h": k_h, "γ_M2": 1.25},
         ("α_b", min(ahead)), ("k_1", min(side)), ("F_b_Rd", (r, "N")), ("η_b", force / r))


bearing("M8 at an end of 6082-T6", "M8", 700, 310, 5, 18, 0, 13.5, 0, 1, 6000)
bearing("M8 at an end and edge near", "M8", 700, 195, 3, 12, 0, 11, 0, 1, 3000)
bearing("M10 inner, next hole near", "M10", 800, 260, 4, 0, 25, 0, 26, 1, 8000)
bearing("M12 free on all sides", "M12", 800, 310, 6, 0, 0, 0, 0, 1, 8000)
bearing("M6 weak bolt on strong plate", "M6", 200, 310, 8, 0, 0, 0, 0, 1, 800)
bearing("M8 slotted across", "M8", 700, 260, 4, 27, 0, 18, 0, 0.6, 2000)

# --- design strengths
case("strengths 6082-T6 EN", "design strengths", "en1999-strengths", "EN 1999-1-1:2007, 6.2, from memory; worked out apart",
     {"f_o": (260, "MPa"), "f_u": (310, "MPa"), "γ_M1": 1.1, "γ_M2": 1.25},
     ("f_od", (260 / 1.1, "MPa")), ("f_ud", (248, "MPa")), ("τ_od", (260 / 1.1 / 3 ** 0.5, "MPa")))
case("strengths 6061-T6 ADM by allowable strength", "design strengths", "adm-strengths",
     "Aluminum Design Manual 2020, from memory: 35/1.65 = 21.2 ksi, 38/1.95 = 19.5 ksi are its well-known allowable stresses",
     {"f_o": (35, "ksi"), "f_u": (38, "ksi"), "φ_y": 1, "Ω_y": 1.65, "φ_u": 1, "Ω_u": 1.95},
     ("f_od", (21.2, "ksi"), 1e-3, "printed to three digits"), ("f_ud", (19.5, "ksi"), 1e-3, "printed to three digits"))
case("strengths 6061-T6 AS/NZS", "design strengths", "asnzs1664-strengths", "AS/NZS 1664.1:1997, from memory; worked out apart",
     {"f_o": (240, "MPa"), "f_u": (260, "MPa"), "φ_y": 0.95, "Ω_y": 1, "φ_u": 0.85, "Ω_u": 1},
     ("f_od", (228, "MPa")), ("f_ud", (221, "MPa")), ("τ_od", (136.8, "MPa")))

# --- bolts by codes with factors
ADM = "Aluminum Design Manual 2020, from memory, confirm; worked out apart"
AS = "AS 4100:2020 and AS/NZS 1664.1:1997, from memory, confirm; worked out apart"


def factored_shear(code, size, fub, k_v, thread, planes, packing, length, phi, omega):
    d, pitch, _, _ = SIZES[size]
    minus = 1.191 if code == "adm" else 1.2269
    dia = d - minus * pitch if thread else d
    k_r = max(0.75, min(1, 1.075 - length / 4000))
    k_p = max(0.85, min(1, 1 - 0.0154 * (packing - 6))) if code == "adm" else (1 if packing <= 6 else 0.85)
    nominal = planes * k_r * k_p * k_v * fub * PI * dia ** 2 / 4
    case(f"{code} shear {size}, thread {thread}, {planes} planes, packing {packing}, length {length}", "bolt in shear",
         f"{code}-bolt-shear", ADM if code == "adm" else AS,
         {"F_v": (3, "kN"), "n": planes, "thread": int(thread), "t_p": (packing, "mm"), "L_j": (length, "mm"), "d": (d, "mm"),
          "P": (pitch, "mm"), "f_ub": (fub, "MPa"), "k_v": k_v, "φ_b": phi, "Ω_b": omega},
         ("R_n", (nominal, "N")), ("F_v_Rd", (phi * nominal / omega, "N")))


factored_shear("adm", "M10", 700, 0.6, True, 1, 0, 0, 0.65, 1)
factored_shear("adm", "M12", 800, 0.6, False, 2, 9, 0, 1, 2.34)
factored_shear("asnzs1664", "M12", 800, 0.62, True, 1, 8, 0, 0.65, 1)
factored_shear("asnzs1664", "M8", 700, 0.62, False, 1, 0, 700, 0.65, 1)
case("AS 4100 M16 8.8 shear, thread in plane", "bolt in shear", "asnzs1664-bolt-shear",
     "Design tables for bolts to AS 4100 with 830 MPa for grade 8.8/S, from memory, confirm: M16 59.3 kN, thread in the plane, φ 0.8",
     {"F_v": (3, "kN"), "n": 1, "thread": 1, "t_p": (0, "mm"), "L_j": (0, "mm"), "d": (16, "mm"), "P": (2, "mm"), "f_ub": (830, "MPa"),
      "k_v": 0.62, "φ_b": 0.8, "Ω_b": 1}, ("F_v_Rd", (59.3, "kN"), 2e-3, "printed to three digits"))
for d, pitch, fub, phi, omega in [(10, 1.5, 700, 0.65, 1), (12, 1.75, 800, 1, 2.34)]:
    area = PI / 4 * (d - 1.191 * pitch) ** 2
    case(f"adm tension M{d}", "bolt in tension", "adm-bolt-tension", ADM,
         {"F_t": (2, "kN"), "f_ub": (fub, "MPa"), "φ_b": phi, "Ω_b": omega, "d": (d, "mm"), "P": (pitch, "mm")},
         ("A_r", (area, "mm2")), ("F_t_Rd", (phi * fub * area / omega, "N")))
case("AS 4100 M16 8.8 tension", "bolt in tension", "asnzs1664-bolt-tension",
     "Design tables for bolts to AS 4100 with 830 MPa for grade 8.8/S, from memory, confirm: M16 104 kN, φ 0.8",
     {"F_t": (2, "kN"), "f_ub": (830, "MPa"), "φ_b": 0.8, "Ω_b": 1, "A_s": (157, "mm2")},
     ("F_t_Rd", (104, "kN"), 3e-3, "printed to three digits"))
case("both by squares", "bolt in shear and tension", "bolt-both", "A 3-4-5 triangle: 0.6² + 0.8² = 1",
     {"F_v": (6, "kN"), "F_v_Rd": (10, "kN"), "F_t": (8, "kN"), "F_t_Rd": (10, "kN")}, ("η_vt", 1.0))


def factored_bearing(code, d, t, e1, p1, fu, k_h, phi, omega):
    ahead = min([2 * d] + ([e1] if e1 else []) + ([p1 - d / 2] if p1 else []))
    r = phi * k_h * ahead * t * fu / omega
    case(f"{code} bearing M{d}, e {e1}, p {p1}", "bolt on a plate", f"{code}-bearing", ADM if code == "adm" else AS,
         {"F_b": (2, "kN"), "d": (d, "mm"), "t": (t, "mm"), "e_1": (e1, "mm"), "p_1": (p1, "mm"), "f_u": (fu, "MPa"), "k_m": 2,
          "k_h": k_h, "φ_j": phi, "Ω_j": omega}, ("d_e", (ahead, "mm")), ("F_b_Rd", (r, "N")))


factored_bearing("adm", 8, 5, 18, 0, 262, 1, 0.75, 1)
factored_bearing("adm", 8, 3, 12, 25, 207, 1, 1, 1.95)
factored_bearing("asnzs1664", 10, 4, 0, 22, 260, 1, 0.85, 1)
case("adm bearing at 2 D: 6061-T6 by allowable strength", "bolt on a plate", "adm-bearing",
     "Aluminum Design Manual, Table 2-19 of editions by allowable stress, from memory, confirm: 39 ksi on hole bearing of 6061-T6",
     {"F_b": (2, "kN"), "d": (0.5, "in"), "t": (0.25, "in"), "e_1": (1, "in"), "p_1": (0, "mm"), "f_u": (38, "ksi"), "k_m": 2,
      "k_h": 1, "φ_j": 1, "Ω_j": 1.95}, ("F_b_Rd", (39 * 0.5 * 0.25 * 4.4482216152605, "kN"), 2e-3, "printed to two digits"))

# --- distances
case("distances M8 in 5 mm", "distances of a hole", "en1999-distances", "EN 1993-1-8, Table 3.3, read; worked out apart",
     {"d_0": (9, "mm"), "e_1": (18, "mm"), "e_2": (10, "mm"), "p_1": (100, "mm"), "p_2": (0, "mm"), "t": (5, "mm"), "k_et": 4,
      "k_el": (40, "mm"), "k_pt": 14, "k_pl": (200, "mm"), "k_e1": 1.2, "k_e2": 1.2, "k_p1": 2.2, "k_p2": 2.4},
     ("least_e1", (10.8, "mm")), ("η_e1", 0.6), ("η_e2", 1.08), ("η_p1", 19.8 / 100), ("η_p2", 0), ("most_e", (60, "mm")),
     ("η_most_e1", 0.3), ("η_most_p1", 100 / 70))
case("distances 1/2 in bolt", "distances of a bolt", "bolt-distances", ADM,
     {"d": (0.5, "in"), "e_1": (1, "in"), "e_2": (0.6, "in"), "p_1": (1.25, "in"), "p_2": (0, "mm"), "k_e1": 1.5, "k_e2": 1.5,
      "k_p1": 2.5, "k_p2": 2.5}, ("η_e1", 0.75), ("η_e2", 1.25), ("η_p1", 1.0), ("η_p2", 0))

# --- shank on the edge of a lip
for d, t, opening, f_od in [(8, 3, 8.5, 170 / 1.1), (10, 4, 11, 0.95 * 215)]:
    dug = d / 2 - math.sqrt((d / 2) ** 2 - (d / 4) ** 2)
    case(f"M{d} on a lip of {t} mm", "bolt on the edge of a lip", "lip-edge",
         "Pythagoras in the shank: half the chord is a quarter of the diameter; a column of that width at yielding, by hand",
         {"F_e": (1, "kN"), "d": (d, "mm"), "t": (t, "mm"), "O": (opening, "mm"), "f_od": (f_od, "MPa")},
         ("g", ((opening - d) / 2, "mm")), ("δ", (dug, "mm")), ("F_e_Rd", (d * t * f_od / 2, "N")), ("η_e", 2000 / (d * t * f_od)))

# --- wall between webs
for force, part, x, w, first, second, before in [(2, 1, 27, 54, 200, 200, 0), (3, 0.5, 10, 54, 5, 40, 60)]:
    length = min(0.69 * x, first) + min(0.69 * x, second)
    case(f"wall of {w} mm, load at {x} mm", "load on a wall between webs", "wall-load",
         "A supported strip under a force: F x (w - x)/w, on the length of wall that is there, by hand",
         {"S_0": (before, "N"), "F": (force, "kN"), "k_F": part, "x": (x, "mm"), "w": (w, "mm"), "l_1": (first, "mm"),
          "l_2": (second, "mm")}, ("l", (length, "mm")), ("S", (before + part * force * 1000 * x * (w - x) / w / length, "N")))
for hinges in (1, 2):
    case(f"wall with {hinges} hinges", "wall between webs", "wall", "Plastic moment of a rectangle, t²/4, once or twice, by hand",
         {"S": (300, "N"), "t": (3, "mm"), "n_h": hinges, "f_od": (160, "MPa")}, ("m_pl", (360, "N")),
         ("S_Rd", (360 * hinges, "N")), ("η_w", 300 / 360 / hinges))

# --- block tearing, punching, net section
PLATES = ("N. M. Holtz, Steel I (nholtz.github.io/steel1-book), example T01, net areas of a lap splice with staggered holes (read): width 210 mm, "
          "holes 24 mm; legs and widths as printed there")
ZERO = {f"{k}_{i}": (v, "mm") for i in (1, 2, 3, 4) for k, v in (("s", 0), ("p", 1))}


def slants(ident, source, legs, total, tolerance=1e-9, reason=SAME, before=0):
    given = {"b_0": (before, "mm")} | ZERO
    for i, (s, p) in enumerate(legs, 1):
        given |= {f"s_{i}": (s, "mm"), f"p_{i}": (p, "mm")}
    case(ident, "legs of a line through staggered holes", "net-slants", source, given, ("b", (total, "mm"), tolerance, reason))


PRINTED = "printed to a tenth of a millimetre of 210 mm"
for ident, legs, net in [("outer plates, path 2-2", [(50, 45)], 175.9), ("outer plates, path 3-3", [(55, 50), (50, 45)], 167.0),
                         ("inner plate, path 2-2", [(50, 50)], 174.5), ("inner plate, path 2-3", [(50, 50), (50, 95)], 157.1)]:
    n = len(legs) + 1
    slants(ident, PLATES, legs, net - 210 + n * 24, 0.005, PRINTED)
    case(f"area, {ident}", "plate with staggered holes", "net-line", PLATES,
         {"w": (210, "mm"), "t": (20, "mm"), "n": n, "d_0": (24, "mm"), "b": (sum(s * s / 4 / p for s, p in legs), "mm")},
         ("A_g", (4200, "mm2")), ("A_net", (net * 20, "mm2"), 4e-4, PRINTED))
slants("a steep leg is sheared", "EN 1999-1-1:2007, 6.2.2.2, from memory: the lesser of 60²/(4·20) = 45 and 0.65·60 = 39", [(60, 20)], 39)
slants("four legs after others", "EN 1993-1-1, 6.2.2.2(4), form read in AD 398, whose first three legs these are; worked out apart",
       [(50, 80), (30, 70), (20, 150), (10, 25)], 5 + 2500 / 320 + 900 / 280 + 400 / 600 + 1, before=5)
case("straight line", "plate with holes in a row", "net-line", "Geometry: (100 - 2·11)·8 of 100·8",
     {"w": (100, "mm"), "t": (8, "mm"), "n": 2, "d_0": (11, "mm"), "b": (0, "mm")}, ("A_net", (624, "mm2")))

for ecc in (0, 1):
    v = (0.5 if ecc else 1) * 260 * 155 / 1.25 + 240 * 220 / 3 ** 0.5 / 1.1
    case(f"block EN, uneven {ecc}", "block torn out", "en1999-block", "EN 1999-1-1:2007, 8.5.2.2, from memory; worked out apart",
         {"F": (10, "kN"), "A_nt": (155, "mm2"), "A_nv": (220, "mm2"), "ecc": ecc, "f_o": (240, "MPa"), "f_u": (260, "MPa"),
          "γ_M1": 1.1, "γ_M2": 1.25}, ("V_eff_Rd", (v, "N")), ("η_bt", 10000 / v))
# torn part stronger: yielding in shear; sheared part stronger: yielding in tension
for a_nt, a_gt, a_nv, a_gv in [(300, 360, 200, 260), (100, 145, 400, 500)]:
    torn, sheared = 260 * a_nt, 0.6 * 260 * a_nv
    r = torn + 0.6 * 240 * a_gv if torn >= sheared else sheared + 240 * a_gt
    r = min(r, torn + sheared)
    case(f"block ADM {a_nt} {a_nv}", "block torn out", "adm-block", ADM,
         {"F": (10, "kN"), "A_nt": (a_nt, "mm2"), "A_nv": (a_nv, "mm2"), "ecc": 0, "f_o": (240, "MPa"), "f_u": (260, "MPa"),
          "A_gt": (a_gt, "mm2"), "A_gv": (a_gv, "mm2"), "φ_j": 0.75, "Ω_j": 1}, ("V_eff_Rd", (0.75 * r, "N")))
    r = torn + min(sheared, 0.6 * 240 * a_gv)
    case(f"block AS {a_nt} {a_nv}", "block torn out", "asnzs1664-block", AS,
         {"F": (10, "kN"), "A_nt": (a_nt, "mm2"), "A_nv": (a_nv, "mm2"), "ecc": 0, "f_o": (240, "MPa"), "f_u": (260, "MPa"),
          "A_gv": (a_gv, "mm2"), "φ_j": 0.75, "Ω_j": 1}, ("V_eff_Rd", (0.75 * r, "N")))
points = 13 / math.cos(PI / 6)
case("punching M8 through 3 mm", "head through a plate", "punching",
     "EN 1993-1-8, Table 3.4, read; corners of the hexagon by trigonometry, worked out apart",
     {"F_t": (5, "kN"), "t": (3, "mm"), "d_w": (0, "mm"), "s": (13, "mm"), "f_ud": (156, "MPa")},
     ("d_m", ((13 + points) / 2, "mm")), ("B_p_Rd", (0.6 * PI * (13 + points) / 2 * 3 * 156, "N")))
case("punching with washer", "washer through a plate", "punching", "EN 1993-1-8, Table 3.4, read; worked out apart",
     {"F_t": (5, "kN"), "t": (2, "mm"), "d_w": (16, "mm"), "s": (13, "mm"), "f_ud": (100, "MPa")},
     ("B_p_Rd", (0.6 * PI * 16 * 2 * 100, "N")))
case("net section", "plate in tension", "net-section", "EN 1999-1-1:2007, 6.2.3, from memory; worked out apart",
     {"N": (20, "kN"), "A_g": (200, "mm2"), "A_net": (155, "mm2"), "k_net": 0.9, "f_od": (218.18, "MPa"), "f_ud": (208, "MPa")},
     ("N_g", (43636, "N")), ("N_n", (0.9 * 155 * 208, "N")), ("η_Nn", 20000 / (0.9 * 155 * 208)))

# --- slip
for name, source, phi, gamma, k_t in [
        ("en1999", "EN 1999-1-1:2007, 8.5.9, from memory, in the form of EN 1993-1-8, 3.9; worked out apart", 1, 1.25, 0.8),
        ("adm", ADM, 1, 1.5, 1), ("asnzs1664", AS, 0.7, 1, 1)]:
    r = phi * 4 * 2 * 0.2 * (12000 - k_t * 3000) / gamma
    case(f"slip {name}", "faces under preload", f"{name}-slip", source,
         {"V": (8, "kN"), "F_p": (12, "kN"), "F_t": (3, "kN"), "n_b": 4, "n_f": 2, "μ": 0.2, "k_t": k_t, "φ_s": phi, "γ_s": gamma},
         ("F_s_Rd", (r, "N")), ("η_s", 8000 / r))
case("slip with the faces apart", "faces under preload", "en1999-slip", "Statics: faces that do not press do not hold",
     {"V": (8, "kN"), "F_p": (2, "kN"), "F_t": (3, "kN"), "n_b": 4, "n_f": 1, "μ": 0.2, "k_t": 0.8, "φ_s": 1, "γ_s": 1.25},
     ("F_s_Rd", (0, "N")), ("η_s", 8000.0))
case("EN 1993-1-8 form: M20 10.9, two faces, class B", "faces under preload", "en1999-slip",
     "EN 1993-1-8, 3.9: 0.7·1000·245 = 171.5 kN; slip factor class B 0.40 of EN 1090-2, read; 2·0.4·171.5/1.25 = 109.8 kN by hand",
     {"V": (1, "kN"), "F_p": (171.5, "kN"), "F_t": (0, "kN"), "n_b": 1, "n_f": 2, "μ": 0.4, "k_t": 0.8, "φ_s": 1, "γ_s": 1.25},
     ("F_s_Rd", (109.76, "kN")))

# --- preload: tables of a handbook after VDI 2230. Torque of the table in, force of the table out.
TABLE = ("Torque and preload of austenitic bolts at 90 % of the 0.2 % proof strength, fastener handbook after VDI 2230, read; the"
         " heads of the table are not given")
FINE = "Torque and preload of 8.8 fine thread at 90 %, VDI 2230 tables (2001), read; the heads of the table are not given"
WHY = "table rounded to two digits, and head and hole of the table unknown: mean head diameters differ by up to 15 %"
# class, size, friction, force kN, torque Nm
ROWS = [("70", "M6", 0.1, 7.3, 6.3), ("70", "M6", 0.2, 6.4, 10.0), ("70", "M6", 0.3, 5.5, 12.2),
        ("70", "M8", 0.1, 13.4, 15.2), ("70", "M8", 0.2, 11.6, 24.1), ("70", "M8", 0.3, 9.9, 30.0),
        ("70", "M10", 0.1, 21.3, 30.0), ("70", "M10", 0.2, 18.5, 47.7),
        ("80", "M6", 0.1, 9.7, 8.4), ("80", "M6", 0.2, 8.4, 13.2), ("80", "M6", 0.3, 7.2, 16.3),
        ("80", "M8", 0.1, 17.9, 20.3), ("80", "M8", 0.2, 15.5, 32.1), ("80", "M8", 0.3, 13.3, 40.0),
        ("80", "M10", 0.1, 28.4, 39.0), ("80", "M10", 0.2, 24.7, 63.0)]
FLATS = {"M6": 10, "M8": 13, "M10": 16, "M12": 18}


def preload_row(ident, source, size, d, pitch, a_s, proof, mu, force, torque, reason, tol):
    d2 = d - 0.6495 * pitch
    # The table's force and torque make the least stress: the equivalent stress of the table's pair must be 90 % of the proof strength.
    thread = pitch / (2 * PI) + d2 * mu / 3 ** 0.5
    d_s = (4 * a_s / PI) ** 0.5
    case(ident, "preload of the table's torque", "preload", source,
         {"T": (torque, "N*m"), "s_T": 0, "μ_min": mu, "μ_max": mu, "k_l": 0, "d": (d, "mm"), "P": (pitch, "mm"),
          "s": (FLATS[size], "mm"), "d_h": (SIZES[size][3], "mm"), "A_s": (a_s, "mm2"), "f_yb": (proof, "MPa")},
         ("F_p_max", (force, "kN"), tol, reason), ("F_p_min", (force, "kN"), tol, reason),
         ("η_tight", 1.0, tol, reason + "; the table fills 90 % of the proof strength"))


for cls, size, mu, force, torque in ROWS:
    d, pitch, a_s, _ = SIZES[size]
    preload_row(f"A-{cls} {size} μ {mu}", TABLE, size, d, pitch, a_s, 450 if cls == "70" else 600, mu, force, torque, WHY, 0.06)
for size, d, pitch, force, torque in [("M8", 8, 1.0, 20.2, 26.1), ("M10", 10, 1.25, 31.6, 51), ("M12", 12, 1.25, 48.0, 90)]:
    a_s = PI / 4 * (d - 0.9382 * pitch) ** 2
    preload_row(f"8.8 {size}x{pitch}", FINE, size, d, pitch, a_s, 640, 0.12, force, torque, WHY, 0.05)
d, pitch, a_s, hole = SIZES["M8"]
d2, dkm = d - 0.6495 * pitch, (13 + hole) / 2
bound = lambda t, mu: t / (0.159154943092 * pitch + 0.577350269190 * d2 * mu + dkm / 2 * mu)
case("bounds of preload M8", "scatter and friction bounds", "preload", "VDI 2230, long form of the torque, from memory; worked out apart",
     {"T": (15, "N*m"), "s_T": 0.1, "μ_min": 0.12, "μ_max": 0.22, "k_l": 0.15, "d": (d, "mm"), "P": (pitch, "mm"), "s": (13, "mm"),
      "d_h": (hole, "mm"), "A_s": (a_s, "mm2"), "f_yb": (450, "MPa")},
     ("F_p_max", (bound(16500, 0.12), "N")), ("F_p_min", (0.85 * bound(13500, 0.22), "N")))
case("tightening factor, M12", "nut factor and tightening factor", "preload-tool",
     "Example read: a torque wrench of tightening factor 1.8 leaves 23.3 kN of 41.9 kN",
     {"T": (41.9 * 0.2 * 12, "N*m"), "K": 0.2, "α_A": 1.8, "k_l": 0, "d": (12, "mm"), "A_s": (84.3, "mm2"), "f_yb": (640, "MPa")},
     ("F_p_max", (41.9, "kN")), ("F_p_min", (23.3, "kN"), 2e-3, "printed to three digits"))

# --- slot lips: the elastic plate by its Fourier integral, the hinge by work
NU = 0.3


def root_moment(a):
    """Amplitude of the root moment of a cantilever plate of depth 1 under a line load cos(ax) on its edge, per load."""
    if a < 1e-3:
        return 1.0
    if a > 60:
        return 0.0
    s, c = math.sinh(a), math.cosh(a)
    m1, m2 = -(s + a * c) - NU * (s - a * c), (2 * c + a * s) - NU * a * s
    v1, v2 = -(2 * c + a * s) + (2 - NU) * a * s, (3 * s + a * c) - (2 - NU) * (s + a * c)
    return abs(2 / (a * (v2 - m2 / m1 * v1)))


def elastic_length(ratio):
    """b/m to P/(peak moment)/m by Simpson's rule."""
    n, top = 6000, 60.0
    f = lambda a: root_moment(a) * (1 if ratio * a == 0 else math.sin(a * ratio / 2) / (a * ratio / 2))
    h = top / n
    total = f(0) + f(top) + sum((4 if i % 2 else 2) * f(i * h) for i in range(1, n))
    return PI / (total * h / 3)


PLATE = "Elastic cantilever plate of infinite length by its Fourier integral, worked out apart"
assert abs(1 / elastic_length(0) - 0.509) < 1e-3  # Jaramillo, J. Appl. Mech. 17 (1950), from memory: 0.509 P at the root
for head, t, reach, overlap, a1, a2 in [(0.001, 3, 6, 1e-3, 500, 500), (5, 3, 6, 2, 500, 500), (9, 3.5, 7, 3, 500, 500),
                                        (16, 3, 6, 4, 500, 500), (24, 2.5, 5, 3, 500, 500), (45, 2.5, 5, 3, 500, 500)]:
    m = reach - overlap / 2
    length = m * elastic_length(head / m) if head / m <= 8 else head
    case(f"lip in use, head {head} on arm {m}", "first yielding of the root", "lip-in-use", PLATE,
         {"F_t": (1, "kN"), "n": 2, "t": (t, "mm"), "c": (reach, "mm"), "w": (overlap, "mm"), "b": (head, "mm"), "a_1": (a1, "mm"),
          "a_2": (a2, "mm"), "f_od": (140, "MPa")},
         ("l_el", (length, "mm"), 6e-3, "straight lines between the rows of the table"),
         ("F_el", (2 * length * t * t / 6 * 140 / m, "N"), 6e-3, "straight lines between the rows of the table"))
case("lip in use, point load at the edge", "peak moment at the root is 0.509 P", "lip-in-use",
     "T. J. Jaramillo, J. Appl. Mech. 17 (1950), load on the edge of a cantilever plate of infinite length, from memory, confirm",
     {"F_t": (1, "kN"), "n": 1, "t": (6 ** 0.5, "mm"), "c": (1.0005, "mm"), "w": (0.001, "mm"), "b": (0.0001, "mm"), "a_1": (9, "mm"),
      "a_2": (9, "mm"), "f_od": (1, "MPa")}, ("F_el", (1 / 0.509, "N"), 2e-3, "printed to three digits, and ν"))
case("lip in use at the end of the extrusion", "half of the length is lost", "lip-in-use", PLATE + "; nothing beyond the end",
     {"F_t": (1, "kN"), "n": 2, "t": (3, "mm"), "c": (6, "mm"), "w": (4, "mm"), "b": (16, "mm"), "a_1": (0, "mm"), "a_2": (99, "mm"),
      "f_od": (140, "MPa")}, ("l_el", (8 + 4 * elastic_length(4) / 2, "mm"), 6e-3, "straight lines between the rows of the table"))
WORK = "Work of the pull and of a straight hinge over the head and 45° to both sides, worked out apart"
for head, t, reach, overlap, a1, a2 in [(16, 3, 6, 4, 500, 500), (16, 3, 6, 4, 0, 500), (12, 2.5, 5, 3, 1.5, 2)]:
    m, f, tau = reach - overlap / 2, 145.0, 84.0
    length = head + min(m, a1) + min(m, a2)
    turn = 1e-3
    pl = 2 * (f * t * t / 4 * length * turn) / (m * turn)
    v = 2 * head * t * tau
    pull = 4000
    case(f"lip, head {head}, ends {a1} {a2}", "hinge, shear and pressure", "lip", WORK,
         {"F_t": (pull, "N"), "n": 2, "t": (t, "mm"), "c": (reach, "mm"), "w": (overlap, "mm"), "b": (head, "mm"), "a_1": (a1, "mm"),
          "a_2": (a2, "mm"), "f_od": (f, "MPa"), "τ_od": (tau, "MPa")},
         ("F_pl", (pl, "N")), ("F_v", (v, "N")), ("F_p", (2 * head * overlap * f, "N")), ("η_lbv", pull / pl + (pull / v) ** 4))

case("lip while tightened", "pressure under the head", "lip-tightened", "Pressure on two rectangles, worked out apart",
     {"F_p_max": (9, "kN"), "n": 2, "w": (4, "mm"), "b": (16, "mm"), "f_od": (145, "MPa")},
     ("F_p", (2 * 4 * 16 * 145, "N")), ("η_lt", 9000 / 18560))

# --- heads and keys
case("head wings", "wings under the pull", "head", "Statics of two cantilevers, worked out apart",
     {"F_t": (6, "kN"), "b": (12, "mm"), "h": (5, "mm"), "w": (4, "mm"), "s": (8.5, "mm"), "k": (8, "mm"), "f_yb": (450, "MPa"),
      "φ_b": 1, "γ_b": 1.25},
     ("m_h", (2.25, "mm")), ("F_hb", (2 * (360 * 12 * 25 / 4) / 2.25, "N")), ("F_hv", (2 * 360 / 3 ** 0.5 * 60, "N")),
     ("η_hbv", 6000 / (2 * (360 * 12 * 25 / 4) / 2.25) + (6000 / (2 * 360 / 3 ** 0.5 * 60)) ** 4))
# two blocks of pressure, each over half of the length, their middles half of the length apart
case("head turned", "sides of the slot", "head-turning", "Two equal blocks of pressure, worked out apart",
     {"T": (10, "N*m"), "b": (12, "mm"), "h": (5, "mm"), "f_od": (145, "MPa")},
     ("T_h", (145 * 5 * 6 * 6, "N*mm")), ("η_hT", 10000 / (145 * 5 * 36)))
b_key, v_key = 5 * 5 * 40 / 4 * 236 / 1.25, 5 * 40 * 136
case("key softer slot", "key in a slot", "key", "Pressure, shear, and bending at half of the depth, worked out apart",
     {"F_k": (9, "kN"), "h": (2.5, "mm"), "h_w": (3, "mm"), "l": (40, "mm"), "t": (5, "mm"), "f_k": (236, "MPa"), "τ_k": (136, "MPa"),
      "f_s": (127, "MPa")},
     ("F_p", (2.5 * 40 * 127, "N")), ("F_v", (v_key, "N")), ("F_b", (b_key, "N")), ("η_kbv", 9000 / b_key + (9000 / v_key) ** 4))
case("key on a thin side", "the lesser depth bears", "key", "Pressure on the lesser depth, worked out apart",
     {"F_k": (4, "kN"), "h": (4, "mm"), "h_w": (2, "mm"), "l": (30, "mm"), "t": (6, "mm"), "f_k": (100, "MPa"), "τ_k": (57, "MPa"),
      "f_s": (200, "MPa")}, ("h_b", (2, "mm")), ("F_p", (6, "kN")))

# --- bracket legs
case("leg", "hinge line", "leg", "Plastic moments of a rectangle; interaction after Neal, from memory; worked out apart",
     {"M_o": (20, "N*m"), "M_i": (50, "N*m"), "V": (3, "kN"), "N": (4, "kN"), "t": (5, "mm"), "b": (40, "mm"), "d_h": (9, "mm"),
      "f_od": (218, "MPa"), "τ_od": (126, "MPa")},
     ("M_o_pl", (31 * 25 / 4 * 218, "N*mm")), ("M_i_pl", (5 * 31 ** 2 / 4 * 218, "N*mm")), ("N_pl", (31 * 5 * 218, "N")),
     ("η_leg", 20000 / (31 * 25 / 4 * 218) + 50000 / (5 * 961 / 4 * 218) + (4000 / (155 * 218)) ** 2
      + (3000 / (155 * 126)) ** 4 / (1 - (4000 / (155 * 218)) ** 2)))
sigma = 4000 / 155 + 20000 / (31 * 25 / 6) + 50000 / (5 * 961 / 6)
case("leg in use", "first yielding", "leg-in-use", "Elastic stresses of a rectangle, worked out apart",
     {"M_o": (20, "N*m"), "M_i": (50, "N*m"), "V": (3, "kN"), "N": (4, "kN"), "t": (5, "mm"), "b": (40, "mm"), "d_h": (9, "mm"),
      "f_od": (218, "MPa")},
     ("σ", (sigma, "MPa")), ("σ_eq", ((sigma ** 2 + 3 * (1.5 * 3000 / 155) ** 2) ** 0.5, "MPa")))

# --- T-stubs: lengths of the tables of EN 1993-1-8 by pattern, mechanisms by work
T = "EN 1993-1-8, Tables 6.4 to 6.6, from memory, by the name of the pattern; worked out apart"


def lengths(ident, m, e, x1, x2, circular, straight):
    case(f"T-stub lengths, {ident}", "yield lines of a leg at a bolt", "t-stub-lengths", T,
         {"m": (m, "mm"), "e": (e, "mm"), "x_1": (x1, "mm"), "x_2": (x2, "mm")},
         ("l_1", (min(circular, straight), "mm")), ("l_2", (straight, "mm")))


lengths("bolt alone in a wide leg", 15, 12, 300, 300, 2 * PI * 15, 4 * 15 + 1.25 * 12)
lengths("bolt alone near an end", 15, 12, 10, 300, min(2 * PI * 15, PI * 15 + 20), 2 * 15 + 0.625 * 12 + 10)
lengths("inner bolt of a row, pitch 30", 15, 12, 15, 15, 60, 30)
lengths("end bolt of a row, pitch 40, end 14", 20, 15, 14, 20, min(PI * 20 + 40, 2 * 14 + 40), min(2 * 20 + 0.625 * 15 + 20, 14 + 20))


def mechanism(ident, t, m, e, l1, l2, f, h_s, k_o, bolt, pull):
    """Loads of the mechanisms of half a leg: work of hinges, and of the bolt in its own lengthening."""
    n = min(e, 1.25 * m)
    turn = 1e-3
    m1, m2 = f * t * t / 4 * l1, f * t * t / 4 * l2
    two = 2 * m1 * h_s * turn / (turn * m)
    # one hinge at the root turns the leg about the prying edge: the pull moves (m+n)·turn, the bolt lengthens n·turn
    one_a = (m2 * h_s * turn + k_o * bolt * n * turn) / ((m + n) * turn)
    one_b = (m2 * turn + bolt * n * turn) / ((m + n) * turn)
    resistance = min(two, one_a, one_b, bolt)
    q = max(0, (pull * m - m2) / n)
    case(f"T-stub, {ident}", "mechanisms of half a T-stub", "t-stub",
         "Virtual work of the mechanisms of EN 1993-1-8, 6.2.4 and EN 1999-1-1, Annex B; worked out apart",
         {"F": (pull, "N"), "t": (t, "mm"), "m": (m, "mm"), "n": (n, "mm"), "l_1": (l1, "mm"), "l_2": (l2, "mm"), "f_od": (f, "MPa"),
          "h_s": h_s, "k_o": k_o, "F_t_Rd": (bolt, "N")},
         ("F_1", (two, "N")), ("F_2a", (one_a, "N")), ("F_2b", (one_b, "N")), ("F_Rd", (resistance, "N")), ("Q", (q, "N")),
         ("F_t", (pull + q, "N")))


mechanism("thin leg", 4, 15, 12, 50, 60, 218, 1.1, 0.64, 18446, 1500)
mechanism("thicker leg", 8, 15, 20, 50, 60, 218, 1.1, 0.64, 18446, 9000)
mechanism("thick leg", 25, 15, 20, 50, 60, 218, 1.0, 1.0, 18446, 18000)
psi = (0.08 - 1.5 * 240 / 70000) / (1.5 * (0.08 - 240 / 70000))
case("hardening 6061-T6", "hinge with hardening", "en1999-hardening", "EN 1999-1-1:2007, Annex B, from memory; worked out apart",
     {"f_o": (240, "MPa"), "f_u": (260, "MPa"), "E": (70000, "MPa"), "ε_u": 0.08},
     ("h_s", 260 / 240 * (240 / 260) * (1 + psi * 20 / 240)))

# --- published examples of steel joints: same forms, steel's strengths
MSB = "Steel Buildings in Europe, Multi-Storey Part 5, "
DIGITS = "printed to three digits"


def published_bearing(ident, source, d, t, d0, e1, p1, e2, p2, fu, gamma, *expected):
    case(ident, "bolt on a plate", "en1999-bearing", source,
         {"F_b": (1, "kN"), "d": (d, "mm"), "t": (t, "mm"), "d_0": (d0, "mm"), "e_1": (e1, "mm"), "p_1": (p1, "mm"), "e_2": (e2, "mm"),
          "p_2": (p2, "mm"), "f_u": (fu, "MPa"), "f_ub": (800, "MPa"), "k_h": 1, "γ_M2": gamma}, *expected)


ROUNDED = "printed to two or three digits, with factors rounded to two digits on the way"
published_bearing("fin plate, vertical", MSB + "worked example of a fin plate, page 5-41, read", 20, 10, 22, 40, 70, 50, 60, 430, 1.25,
                  ("k_1", 2.12, 3e-3, ROUNDED), ("α_b", 0.61, 8e-3, ROUNDED), ("F_b_Rd", (89, "kN"), 1e-2, ROUNDED))
published_bearing("fin plate, horizontal", MSB + "worked example of a fin plate, page 5-41, read", 20, 10, 22, 50, 60, 40, 70, 430, 1.25,
                  ("k_e", 3.39, 3e-3, ROUNDED), ("k_p", 2.75, 3e-3, ROUNDED), ("k_1", 2.5), ("α_e", 0.75, 2e-2, ROUNDED),
                  ("α_b", 0.66, 3e-3, ROUNDED), ("F_b_Rd", (114, "kN"), 1e-2, ROUNDED))
published_bearing("column splice, end bolt", MSB + "worked example of a column splice, page 5-100, read", 20, 12, 22, 40, 0, 55, 0, 430, 1.1,
                  ("k_e", 5.3, 3e-3, ROUNDED), ("F_b_Rd", (143, "kN"), 1e-2, ROUNDED))
published_bearing("column splice, inner bolt", MSB + "worked example of a column splice, page 5-100, read", 20, 12, 22, 0, 160, 55, 0, 430,
                  1.1, ("α_p", 2.17, 3e-3, ROUNDED), ("F_b_Rd", (235, "kN"), 5e-3, ROUNDED))


def published_shear(ident, source, size, d, a_s, packing, planes, gamma, *expected):
    case(ident, "bolt in shear", "en1999-bolt-shear", source,
         {"F_v": (1, "kN"), "n": planes, "thread": 1, "t_p": (packing, "mm"), "L_j": (0, "mm"), "d": (d, "mm"),
          "A": (PI * d * d / 4, "mm2"), "A_s": (a_s, "mm2"), "f_ub": (800, "MPa"), "α_s": 0.6, "α_t": 0.6, "γ_M2": gamma}, *expected)


published_shear("column splice, packing of 30 mm", MSB + "worked example of a column splice, page 5-100, read", "M20", 20, 245, 30, 1, 1.1,
                ("β_p", 0.72, 2e-3, ROUNDED), ("F_v_Rd", (77, "kN"), 5e-3, ROUNDED))
BOOK = "Resistance tables of preloaded class 8.8 bolts to BS EN 1993-1-8 for S460 plates, read"
for d, a_s, one, slips in [(16, 157, 60.3, {0.2: 16.0, 0.3: 24.0, 0.4: 32.0, 0.5: 39.9}),
                           (20, 245, 94.1, {0.2: 24.9, 0.3: 37.4, 0.4: 49.9, 0.5: 62.4}),
                           (24, 353, 136, {0.2: 35.9, 0.3: 53.9, 0.4: 71.9, 0.5: 89.9})]:
    published_shear(f"table M{d} 8.8", BOOK, "", d, a_s, 0, 1, 1.25, ("F_v_Rd", (one, "kN"), 4e-3, DIGITS))
    for mu, value in slips.items():
        case(f"table M{d} 8.8, slip in use, μ {mu}", "faces under preload of 0.7 of the tensile strength", "en1999-slip", BOOK,
             {"V": (1, "kN"), "F_p": (0.7 * 800 * a_s, "N"), "F_t": (0, "kN"), "n_b": 1, "n_f": 1, "μ": mu, "k_t": 0.8, "φ_s": 1, "γ_s": 1.1},
             ("F_s_Rd", (value, "kN"), 3e-3, DIGITS))
for faces, value in [(2, 107.52), (1, 53.76)]:
    case(f"chord splice, {faces} face(s)", "faces under preload", "en1999-slip",
         "Steel Buildings in Europe, Single-Storey Part 5, worked example of a chord splice, page 5-63, read",
         {"V": (1, "kN"), "F_p": (134.4, "kN"), "F_t": (0, "kN"), "n_b": 1, "n_f": faces, "μ": 0.5, "k_t": 0.8, "φ_s": 1, "γ_s": 1.25},
         ("F_s_Rd", (value, "kN")))

published_bearing("end plate, end bolt", MSB + "worked example of a partial depth end plate, page 5-17, read", 20, 12, 22, 40, 0, 30, 0, 430,
                  1.25, ("k_1", 2.12, 3e-3, ROUNDED), ("F_b_Rd", (107, "kN"), 1e-2, ROUNDED))
published_bearing("end plate, inner bolt", MSB + "worked example of a partial depth end plate, page 5-17, read", 20, 12, 22, 0, 70, 30, 0,
                  430, 1.25, ("α_p", 0.81, 3e-3, ROUNDED), ("F_b_Rd", (142, "kN"), 1e-2, ROUNDED))
published_bearing("fin plate, tying", MSB + "worked example of a fin plate, page 5-48, read", 20, 10, 22, 50, 60, 40, 70, 430, 1.1,
                  ("F_b_Rd", (129, "kN"), 1e-2, ROUNDED))
for ident, page, a_nt, a_nv, ecc, gamma, value in [("uneven", "5-43", 770, 2210, 1, 1.25, 483), ("tying, even", "5-48", 1920, 1540, 0, 1.1, 995)]:
    case(f"fin plate, block {ident}", "block torn out", "en1999-block", MSB + f"worked example of a fin plate, page {page}, read",
         {"F": (1, "kN"), "A_nt": (a_nt, "mm2"), "A_nv": (a_nv, "mm2"), "ecc": ecc, "f_o": (275, "MPa"), "f_u": (430, "MPa"), "γ_M1": 1.0,
          "γ_M2": gamma}, ("V_eff_Rd", (value, "kN"), 2e-3, DIGITS))
case("fin plate, net section", "plate in tension", "net-section", MSB + "worked example of a fin plate, page 5-48, read",
     {"N": (1, "kN"), "A_g": (3600, "mm2"), "A_net": (2500, "mm2"), "k_net": 0.9, "f_od": (275, "MPa"), "f_ud": (430 / 1.1, "MPa")},
     ("N_n", (880, "kN"), 1e-3, DIGITS))

CLEAT = MSB + "worked example of angle web cleats, page {}, read"
published_shear("angle cleats", CLEAT.format("5-79"), "M20", 20, 245, 0, 1, 1.1, ("F_v_Rd", (107, "kN"), 3e-3, DIGITS))
published_shear("angle cleats, factor 1.25", CLEAT.format("5-70"), "M20", 20, 245, 0, 1, 1.25, ("F_v_Rd", (94, "kN"), 3e-3, DIGITS))
published_bearing("angle cleats, beam web", CLEAT.format("5-81"), 20, 9, 22, 40, 0, 0, 70, 430, 1.1, ("F_b_Rd", (107, "kN"), 1e-2, ROUNDED))
published_bearing("angle cleats, end bolt", CLEAT.format("5-74"), 20, 10, 22, 40, 0, 40, 0, 430, 1.25, ("F_b_Rd", (105, "kN"), 1e-2, ROUNDED))
published_bearing("angle cleats, inner bolt", CLEAT.format("5-74"), 20, 10, 22, 0, 70, 40, 0, 430, 1.25,
                  ("F_b_Rd", (139, "kN"), 1e-2, ROUNDED))
case("angle cleats, block", "block torn out", "en1999-block", CLEAT.format("5-81"),
     {"F": (1, "kN"), "A_nt": (5380, "mm2"), "A_nv": (580, "mm2"), "ecc": 0, "f_o": (275, "MPa"), "f_u": (430, "MPa"), "γ_M1": 1.0,
      "γ_M2": 1.1}, ("V_eff_Rd", (2195, "kN"), 1e-3, "printed to four digits"))
# A whole T with two rows of six bolts: 4.2 kNm, 1190 kN and 1920 kN; here one bolt's share, a twelfth of the loads, a sixth of a hinge.
case("angle cleats as a T-stub", "mechanisms 2 and 3, one of twelve bolts", "t-stub", CLEAT.format("5-78, 5-79"),
     {"F": (30, "kN"), "t": (10, "mm"), "m": (31, "mm"), "n": (39, "mm"), "l_1": (430 / 6, "mm"), "l_2": (430 / 6, "mm"),
      "f_od": (430 / 1.1, "MPa"), "h_s": 1, "k_o": 1, "F_t_Rd": (0.9 * 800 * 245 / 1.1, "N")},
     ("M_2", (4.2 / 6, "kN*m"), 2e-3, DIGITS), ("F_2b", (1190 / 12, "kN"), 4e-3, ROUNDED), ("F_3", (1920 / 12, "kN"), 4e-3, ROUNDED))

# The end: writes the file.
OUT = HERE / "cases.json"
OUT.write_text('{"cases": [\n' + ",\n".join(json.dumps(c, ensure_ascii=False) for c in CASES) + "\n]}\n", encoding="utf-8")
print(len(CASES), "cases,", sum(len(c["expected"]) for c in CASES), "values")
