#!/usr/bin/env python3
"""Writes the strength cases beside this file. Every expected value is worked out here in ksi and inches, from the formulas as the
publications print them, or copied from the work named; never from the program under test. Needs nothing but Python.
Run: python3 make_cases.py
"""
import json
import math
import pathlib

HERE = pathlib.Path(__file__).parent
PI = math.pi
E = 10100.0
G = 3800.0

ADM = "Aluminum Design Manual 2020, from memory, confirm against the standard; worked out apart in ksi"
ASNZS = "AS/NZS 1664.1:1997, from memory, confirm against the standard; worked out apart in MPa"
T22 = ("Aluminum Design Manual, Part VII, Table 2-2 (March 2006), 1100-H14, building type structures; published allowable stress"
       " times its factor of safety 1.95")
GERE = "J. M. Gere and B. J. Goodno, Mechanics of Materials, 7th ed., problem "
SAME = "same formula worked out apart, rounding only"


def text(value, unit):
    return f"{value:.12g} {unit}".strip()


def case(ident, says, procedure, source, given, expected):
    return {"id": ident, "says": says, "procedure": procedure, "source": source,
            "given": {k: (text(*v) if isinstance(v, tuple) else text(v, "")) for k, v in given.items()},
            "expected": [{"symbol": s, "value": text(*v) if isinstance(v, tuple) else text(v, ""), "relative": r,
                          "reason": why} for s, v, r, why in expected]}


class Alloy:
    """Buckling constants in ksi."""

    def __init__(self, name, fty, fcy, ftu, aged, unit=1.0, modulus=E, shear=0.6, div=None):
        self.name, self.fty, self.fcy, self.ftu, self.aged, self.e = name, fty, fcy, ftu, aged, modulus
        d = div or {"c": (2250, 1000), "p": (1500, 440), "br": (340, 340), "t": (50000, 6500), "s": (800, 240)}
        pick = (lambda k: d[k][0]) if aged else (lambda k: d[k][1])
        self.fsy = shear * fty
        e = modulus
        self.Bc = fcy * (1 + math.sqrt(fcy / pick("c")))
        self.Bp = fcy * (1 + (fcy / pick("p")) ** (1 / 3))
        self.Bbr = 1.3 * fcy * (1 + (fcy / pick("br")) ** (1 / 3))
        self.Bt = fcy * (1 + (fcy / pick("t")) ** 0.2)
        self.Btb = 1.5 * fcy * (1 + (fcy / pick("t")) ** 0.2)
        self.Bs = self.fsy * (1 + (self.fsy / pick("s")) ** (1 / 3))

        def slope(b):
            return b / 10 * math.sqrt(b / e) if aged else b / 20 * math.sqrt(6 * b / e)

        def end(b, dd):
            return 0.41 * b / dd if aged else 2 * b / (3 * dd)

        self.Dc, self.Dp, self.Ds = slope(self.Bc), slope(self.Bp), slope(self.Bs)
        self.Cc, self.Cp, self.Cs = end(self.Bc, self.Dc), end(self.Bp, self.Dp), end(self.Bs, self.Ds)
        self.Dbr = self.Bbr / 20 * math.sqrt(6 * self.Bbr / e)
        self.Cbr = 2 * self.Bbr / (3 * self.Dbr)
        self.Dt = self.Bt / (4.5 if aged else 3.7) * (self.Bt / e) ** (1 / 3)
        self.Dtb = self.Btb / 2.7 * (self.Btb / e) ** (1 / 3)
        self.Ctb = ((self.Btb - self.Bt) / (self.Dtb - self.Dt)) ** 2
        self.Ct = self.meet()
        self.k1, self.k2 = (0.35, 2.27) if aged else (0.5, 2.04)

    def meet(self):
        """Bisection, not the Newton steps of the program."""
        f = lambda x: self.Bt - self.Dt * math.sqrt(x) - PI ** 2 * self.e / (16 * x * (1 + math.sqrt(x) / 35) ** 2)
        lo = hi = 1.0
        while f(hi) < 0:
            lo, hi = hi, hi * 1.01
        for _ in range(200):
            mid = (lo + hi) / 2
            lo, hi = (mid, hi) if f(mid) < 0 else (lo, mid)
        return lo


A6061 = Alloy("6061-T6", 35, 35, 38, True)
A6063T5 = Alloy("6063-T5", 16, 16, 22, True)
A6063T6 = Alloy("6063-T6", 25, 25, 30, True)
A6082 = Alloy("6082-T6", 38, 38, 45, True)
H14 = Alloy("1100-H14", 14, 13, 16, False)
WELD = Alloy("6061-T6 beside a weld", 15, 15, 24, False)
ALLOYS = [A6061, A6063T5, A6063T6, A6082, H14, WELD]
cases = []


def constants():
    table = "reference table of constants worked out by hand from the same formulas, printed to four digits"
    printed = {
        "6061-T6": dict(B_c=39.37, D_c=.2458, C_c=65.67, B_p=45.00, D_p=.3004, B_br=66.82, D_br=.6657, C_br=66.92, B_t=43.19,
                        D_t=1.558, B_s=27.24, D_s=.1415, C_s=78.95),
        "6063-T5": dict(B_c=17.35, D_c=.0719, C_c=98.92, B_p=19.52, D_p=.0858, B_br=28.31, D_br=.1836, C_br=102.8, B_t=19.20,
                        D_t=.5285, B_s=11.80, D_s=.0403, C_s=120.0),
        "6063-T6": dict(B_c=27.64, D_c=.1446, C_c=78.38, B_p=31.39, D_p=.1750, B_br=46.12, D_br=.3816, C_br=80.56, B_t=30.47,
                        D_t=.9782, B_s=18.99, D_s=.0823, C_s=94.57),
        "6082-T6": dict(B_c=42.94, D_c=.2800, C_c=62.88, B_p=49.16, D_p=.3430, B_br=73.20, D_br=.7632, C_br=63.94, B_t=47.04,
                        D_t=1.746, B_s=29.76, D_s=.1616, C_s=75.53)}
    for a in ALLOYS:
        exact = [("F_sy", (a.fsy, "ksi"), 1e-9, SAME), ("C_p", a.Cp, 1e-9, SAME), ("B_tb", (a.Btb, "ksi"), 1e-9, SAME),
                 ("D_tb", (a.Dtb, "ksi"), 1e-9, SAME), ("C_tb", a.Ctb, 1e-7, SAME),
                 ("C_t", a.Ct, 1e-9, "meeting point found by bisection; six Newton steps")]
        if a.name in printed:
            exact += [(s, v if s[0] == "C" else (v, "ksi"), 8e-4, table) for s, v in printed[a.name].items()]
        else:
            exact += [("B_c", (a.Bc, "ksi"), 1e-9, SAME), ("D_c", (a.Dc, "ksi"), 1e-9, SAME), ("C_c", a.Cc, 1e-9, SAME),
                      ("B_br", (a.Bbr, "ksi"), 1e-9, SAME), ("D_br", (a.Dbr, "ksi"), 1e-9, SAME)]
        cases.append(case("constants " + a.name, "buckling constants", "adm-buckling-constants", ADM,
                          {"F_ty": (a.fty, "ksi"), "F_cy": (a.fcy, "ksi"), "E": (E, "ksi"), "aged": 1 if a.aged else 0}, exact))
    # The table prints to three digits what it divided by 1.95.
    three = "printed to three digits or fewer"
    cases.append(case("published constants 1100-H14", "lines of a temper that is not aged, against the printed ones",
                      "adm-buckling-constants", T22,
                      {"F_ty": (14, "ksi"), "F_cy": (13, "ksi"), "E": (E, "ksi"), "aged": 0},
                      [("B_c", (7.4 * 1.95, "ksi"), .007, three), ("D_c", (.034 * 1.95, "ksi"), .015, three),
                       ("C_c", 144, .004, three), ("B_p", (8.7 * 1.95, "ksi"), .006, three),
                       ("D_p", (.224 / 5.1 * 1.95, "ksi"), .003, three + "; that edition had 5.1 in place of 5.0"),
                       ("B_t", (8.6 * 1.95, "ksi"), .006, three), ("D_t", (.275 * 1.95, "ksi"), .002, three),
                       ("C_t", 450, .012, "printed to two digits")]))


def flat(a, ratio, k, post=True):
    l1, fe = (a.Bp - a.fcy) / (k * a.Dp), PI ** 2 * E / (k * ratio) ** 2
    l2 = a.k1 * a.Bp / (k * a.Dp) if post else a.Cp / k
    if ratio <= l1:
        f = a.fcy
    elif ratio < l2:
        f = a.Bp - k * a.Dp * ratio
    else:
        f = a.k2 * math.sqrt(a.Bp * E) / (k * ratio) if post else fe
    return l1, l2, f, fe


def elements():
    printed = {"6061-T6": ((6.66, 10.49), (20.8, 32.8)), "6063-T5": ((8.21, 15.92), (25.7, 49.8)),
               "6063-T6": ((7.30, 12.56), (22.8, 39.2)), "6082-T6": ((6.51, 10.03), (20.3, 31.4))}
    for a in ALLOYS:
        base = {"F_cy": (a.fcy, "ksi"), "E": (E, "ksi"), "aged": 1 if a.aged else 0, "B_p": (a.Bp, "ksi"), "D_p": (a.Dp, "ksi"),
                "C_p": a.Cp}
        for edges, k, ratios in ((1, 5.0, (5, 9, 20)), (2, 1.6, (15, 28, 60))):
            for ratio in ratios:
                for post in (True, False):
                    l1, l2, f, fe = flat(a, ratio, k, post)
                    more = []
                    if post and a.name in printed:
                        s1, s2 = printed[a.name][edges - 1]
                        more = [("λ_1", s1, .003, "worked out by hand, printed to three digits"),
                                ("λ_2", s2, .003, "worked out by hand, printed to three digits")] if ratio == ratios[0] else []
                    cases.append(case(
                        f"flat {a.name}, {edges} edge(s) held, b/t {ratio}" + ("" if post else ", no strength after buckling"),
                        "flat element under uniform compression", "adm-flat-element", ADM,
                        {"b": (ratio / 8, "in"), "t": (1 / 8, "in"), "edges": edges, "post": 1 if post else 0, **base},
                        [("F_c", (f, "ksi"), 1e-9, SAME), ("F_e", (fe, "ksi"), 1e-9, SAME), ("λ_2", l2, 1e-9, SAME)] + more))
        for cc, co in ((1, -1), (1, -2), (2, -1), (3, 1)):
            m = 1.3 / (1 - co / cc) if co / cc <= -1 else 1.15 + co / (2 * cc)
            for ratio in (30, 60, 150):
                l1, l2 = (a.Bbr - 1.5 * a.fcy) / (m * a.Dbr), .5 * a.Bbr / (m * a.Dbr)
                f = (1.5 * a.fcy if ratio <= l1 else
                     a.Bbr - m * a.Dbr * ratio if ratio < l2 else 2.04 * math.sqrt(a.Bbr * E) / (m * ratio))
                cases.append(case(f"web {a.name}, c_o/c_c {co}/{cc}, b/t {ratio}", "element bent in its plane", "adm-bent-element",
                                  ADM, {"b": (ratio / 10, "in"), "t": (.1, "in"), "c_c": (cc, "in"), "c_o": (co, "in"),
                                        "F_cy": (a.fcy, "ksi"), "E": (E, "ksi"), "B_br": (a.Bbr, "ksi"), "D_br": (a.Dbr, "ksi")},
                                  [("m", m, 1e-9, SAME), ("F_c", (f, "ksi"), 1e-9, SAME)]))
        for ratio in (20, 60, 300, 900):
            root = math.sqrt(ratio)
            fe = PI ** 2 * E / (16 * ratio * (1 + root / 35) ** 2)
            l1 = ((a.Bt - a.fcy) / a.Dt) ** 2
            f = a.fcy if ratio <= l1 else a.Bt - a.Dt * root if ratio < a.Ct else fe
            lb = ((a.Btb - 1.17 * a.fcy) / a.Dtb) ** 2
            fb = (1.17 * a.fcy if ratio <= lb else a.Btb - a.Dtb * root if ratio < a.Ctb else
                  a.Bt - a.Dt * root if ratio < a.Ct else fe)
            given = {"R_b": (ratio / 10, "in"), "t": (.1, "in"), "F_cy": (a.fcy, "ksi"), "E": (E, "ksi"), "B_t": (a.Bt, "ksi"),
                     "D_t": (a.Dt, "ksi"), "C_t": a.Ct}
            cases.append(case(f"tube {a.name}, R_b/t {ratio}", "round tube in compression", "adm-round-element", ADM, given,
                              [("F_c", (f, "ksi"), 1e-9, SAME), ("F_e", (fe, "ksi"), 1e-9, SAME)]))
            cases.append(case(f"tube in bending {a.name}, R_b/t {ratio}", "round tube in bending", "adm-round-element-bent", ADM,
                              {**given, "B_tb": (a.Btb, "ksi"), "D_tb": (a.Dtb, "ksi"), "C_tb": a.Ctb},
                              [("F_c", (fb, "ksi"), 1e-9, SAME)]))
    a = H14
    given = {"F_cy": (13, "ksi"), "E": (E, "ksi"), "aged": 0, "B_p": (a.Bp, "ksi"), "D_p": (a.Dp, "ksi"), "C_p": a.Cp}
    old = "; that edition had 5.1 in place of 5.0: times 5.1/5"
    for edges, ratio, value, why in ((1, 25, 85 / 25 * 5.1 / 5, "printed to two digits" + old),
                                     (2, 70, 271 / 70, "printed to three digits")):
        cases.append(case(f"published strength after buckling, {edges} edge(s), b/t {ratio}", "1100-H14", "adm-flat-element", T22,
                          {"b": (ratio / 10, "in"), "t": (.1, "in"), "edges": edges, "post": 1, **given},
                          [("F_c", (value * 1.95, "ksi"), .006, why)]))
    cases.append(case("published elastic strength, 1 edge, b/t 30", "column without an axis of symmetry, 1100-H14",
                      "adm-flat-element", T22, {"b": (3, "in"), "t": (.1, "in"), "edges": 1, "post": 0, **given},
                      [("F_c", (1970 / 900 * 1.95 * (5.1 / 5) ** 2, "ksi"), .004, "printed to three digits" + old)]))
    cases.append(case("published strength of a curved wall, R_b/t 600", "1100-H14", "adm-round-element", T22,
                      {"R_b": (60, "in"), "t": (.1, "in"), "F_cy": (13, "ksi"), "E": (E, "ksi"), "B_t": (a.Bt, "ksi"),
                       "D_t": (a.Dt, "ksi"), "C_t": a.Ct},
                      [("F_c", (3190 / (600 * (1 + math.sqrt(600) / 35) ** 2) * 1.95, "ksi"), .003, "printed to three digits")]))


constants()
elements()


def lips():
    a = A6061
    scale = 1.28 * math.sqrt(E / a.fcy)
    for b, t, ds, ts, deg in ((1, .125, .25, .125, 90), (2, .125, .4, .125, 90), (3, .125, .5, .125, 60), (6, .125, .8, .125, 90),
                              (1, .125, .9, .125, 90), (2, .125, .5, .04, 90)):
        ratio = b / t
        ut, st, own = flat(a, ratio, 5)[2], flat(a, ratio, 1.6)[2], flat(a, ds / ts, 5)[2]
        rs = ds * math.sin(math.radians(deg)) / math.sqrt(3)
        s = ratio / scale
        rho = (1 if s <= 1 / 3 else min(1, rs / (9 * t * (s - 1 / 3))) if s <= 1 else
               min(1, rs / (1.5 * t * (s + 3))) if s < 2 else 0)
        if ds > .8 * b:
            rho = 0
        cases.append(case(f"lipped element {b} x {t}, lip {ds} x {ts} at {deg} deg", "6061-T6", "adm-lipped-element", ADM,
                          {"b": (b, "in"), "t": (t, "in"), "d_s": (ds, "in"), "t_s": (ts, "in"), "θ_s": (deg, "deg"),
                           "F_cy": (a.fcy, "ksi"), "E": (E, "ksi"), "aged": 1, "B_p": (a.Bp, "ksi"), "D_p": (a.Dp, "ksi"),
                           "C_p": a.Cp},
                          [("ρ_s", rho, 1e-9, SAME) if rho else ("ρ_s", 0, 0, SAME),
                           ("F_c", (min(own, ut + (st - ut) * rho), "ksi"), 1e-9, SAME)]))


lips()
# --- further parts of the file follow below ---


def write():
    out = json.dumps({"cases": cases}, ensure_ascii=False, indent=1)
    (HERE / "cases.json").write_text(out + "\n", encoding="utf-8")
    print(len(cases), "cases,", sum(len(c["expected"]) for c in cases), "values")


if __name__ == "__main__":
    write()
