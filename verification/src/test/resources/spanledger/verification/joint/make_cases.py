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

# The end: writes the file.
OUT = HERE / "cases.json"
OUT.write_text('{"cases": [\n' + ",\n".join(json.dumps(c, ensure_ascii=False) for c in CASES) + "\n]}\n", encoding="utf-8")
print(len(CASES), "cases,", sum(len(c["expected"]) for c in CASES), "values")
