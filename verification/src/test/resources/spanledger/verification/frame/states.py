"""Writes the case files of StateCasesTest from closed forms and published values.

Every expected value is worked out here by a formula of the work named beside it, by finding the
root of the characteristic equation named there, or is copied from a published table; nothing comes
from the program that is tested. Run: python3 states.py
"""
import json
import math
import os
from itertools import product

HERE = os.path.dirname(os.path.abspath(__file__))
L = 1000.0
E = 1e5
I = 1e6
EI = E * I
PE = math.pi ** 2 * EI / L ** 2
STIFF = {"E": E, "G": 40000, "A": 1e9, "A_v_y": 1e15, "A_v_z": 1e15, "I_y": I, "I_z": 1e8, "I_t": 1e6,
         "why": "rigid in shear, and 1e9 mm2 of area keeps the lengths as the closed forms do"}
TG = "S. P. Timoshenko and J. M. Gere, Theory of Elastic Stability (1961)"
MEM = "from memory, confirm against the standard"
DER = "derived from mechanics"
IN_PLANE = " Y RX RZ"


def bar(**other):
    out = dict(STIFF)
    out.update(other)
    return out


def root(f, a, b):
    fa = f(a)
    assert fa * f(b) < 0, (a, b, fa, f(b))
    for _ in range(200):
        m = 0.5 * (a + b)
        fm = f(m)
        if fa * fm <= 0:
            b = m
        else:
            a, fa = m, fm
    return 0.5 * (a + b)


class File:
    def __init__(self, name, about, bars):
        self.name, self.about, self.bars, self.cases = name, about, bars, []

    def case(self, ident, text, source, given, expected, tolerance, reason, **more):
        work, place, confidence = source
        one = {"id": ident, "description": text,
               "source": {"work": work, "place": place, "confidence": confidence},
               "given": given, "expected": expected,
               "tolerance": tolerance, "toleranceReason": reason}
        one["balance"] = {"tolerance": 1e-7, "reason": "bars of 1e9 mm2 leave more to rounding than real ones"}
        one.update(more)
        self.cases.append(one)

    def write(self):
        head = {"about": self.about, "bars": self.bars}
        with open(os.path.join(HERE, self.name + ".json"), "w") as out:
            out.write("{\n")
            out.write('  "about": ' + json.dumps(self.about) + ",\n")
            out.write('  "bars": ' + json.dumps(self.bars) + ",\n")
            out.write('  "cases": [\n')
            out.write(",\n".join("    " + json.dumps(c) for c in self.cases))
            out.write("\n  ]\n}\n")
        print(self.name, sum(len(c["expected"]) for c in self.cases))


REL7 = {"relative": 1e-7}
ROUND7 = "closed form; members still stretch by 1e-9, and solutions balance to 1e-9"


def beam(loads, end="Y Z", start="X Y Z RX", bar_name="bar", inner=(), more=None):
    nodes = {"A": [0, 0, 0]}
    along = ["A"]
    for i, x in enumerate(inner):
        nodes["N%d" % i] = [x, 0, 0]
        along.append("N%d" % i)
    nodes["B"] = [L, 0, 0]
    along.append("B")
    supports = {"A": start, "B": end}
    supports.update(more or {})
    return {"nodes": nodes, "members": [{"name": "AB", "bar": bar_name, "nodes": along}],
            "supports": supports, "loads": loads}


def column(loads, foot="X Y Z RX RY RZ", head="Y RX RZ", member=None, bar_name="bar"):
    one = {"name": "AB", "bar": bar_name, "nodes": ["A", "B"]}
    one.update(member or {})
    return {"nodes": {"A": [0, 0, 0], "B": [0, 0, L]}, "members": [one],
            "supports": {"A": foot, "B": head}, "loads": loads}


def effect(what, x, value, unit, of, member="AB", **more):
    return dict({"what": "effect", "member": member, "effect": what, "x": x, "size": True,
                 "value": value, "unit": unit, "of": of}, **more)


def movement(node, freedom, value, unit, of, **more):
    return dict({"what": "movement", "node": node, "freedom": freedom, "value": value, "unit": unit,
                 "of": of}, **more)


def reaction(node, freedom, value, unit=1, of="N", **more):
    return dict({"what": "reaction", "node": node, "freedom": freedom, "value": value, "unit": unit,
                 "of": of}, **more)


def second_order():
    f = File("second-order", "Bars and frames in second order. Positive P is compression, as a share of the "
             "Euler load on simple bearings. L = 1000 mm, EI = 1e11 N mm2.", {"bar": bar()})
    for r in (0.05, 0.1, 0.15, 0.2, 0.24):
        p = r * PE
        k = math.sqrt(p / EI)
        f.case("cantilever-%g" % r, "Cantilever column, P = %g of the Euler load, level force 100 N" % r,
               (TG, "art. 1.9, cantilever as half a bar with a force at midspan", MEM),
               column([{"node": "B", "force": [100, 0, -p]}]),
               [movement("B", "X", 100 / p * (math.tan(k * L) / k - L), 1, "mm"),
                effect("M_y", 0, 100 * math.tan(k * L) / k, 1, "N mm")], REL7, ROUND7)
    for r in (0.2, 0.5, 0.8, 0.95):
        p = r * PE
        k = math.sqrt(p / EI)
        v = k * L / 2
        m = p * 10
        f.case("eccentric-%g" % r, "Column on pins, P = %g of the Euler load, 10 mm off centre at both ends" % r,
               (TG, "art. 1.12, secant formula", MEM),
               beam([{"node": "B", "force": [-p, 0, 0], "moment": [0, -m, 0]}, {"node": "A", "moment": [0, m, 0]}]),
               [effect("M_y", L / 2, m / math.cos(v), 1, "N mm"),
                effect("d_z", L / 2, 10 * (1 / math.cos(v) - 1), 1, "mm")], {"relative": 1e-6},
               "the root of the load's square is near a pole; closed form otherwise")
        q = 1.0
        f.case("even-load-%g" % r, "Beam-column on pins under 1 N/mm, P = %g of the Euler load" % r,
               (TG, "art. 1.5, uniformly distributed load", MEM),
               beam([{"node": "B", "force": [-p, 0, 0]}, {"member": "AB", "direction": [0, 0, -1], "q": q}]),
               [effect("M_y", L / 2, q / k ** 2 * (1 / math.cos(v) - 1), 1, "N mm"),
                effect("d_z", L / 2, q / (p * k ** 2) * (1 / math.cos(v) - 1) - q * L ** 2 / (8 * p), 1, "mm"),
                effect("V_z", 0, q / k * math.tan(v), 1, "N")], {"relative": 1e-6},
               "closed form; near the Euler load rounding is enlarged")
        Q = 200.0
        f.case("midspan-force-%g" % r, "Beam-column on pins, 200 N at midspan, P = %g of the Euler load" % r,
               (TG, "art. 1.3, one lateral load", MEM),
               beam([{"node": "B", "force": [-p, 0, 0]}, {"member": "AB", "direction": [0, 0, -1], "P": Q, "at": L / 2}]),
               [effect("M_y", L / 2, Q / (2 * k) * math.tan(v), 1, "N mm"),
                effect("d_z", L / 2, Q / (2 * p * k) * math.tan(v) - Q * L / (4 * p), 1, "mm")], {"relative": 1e-6},
               "closed form; near the Euler load rounding is enlarged")
    for r, a in ((0.3, 300.0), (0.7, 200.0)):
        p = r * PE
        k = math.sqrt(p / EI)
        c = L - a
        Q = 200.0
        f.case("force-beside-midspan-%g" % r, "Beam-column on pins, 200 N at %g mm, P = %g of the Euler load" % (a, r),
               (TG, "art. 1.3, one lateral load", MEM),
               beam([{"node": "B", "force": [-p, 0, 0]}, {"member": "AB", "direction": [0, 0, -1], "P": Q, "at": a}]),
               [effect("M_y", a, Q * math.sin(k * a) * math.sin(k * c) / (k * math.sin(k * L)), 1, "N mm"),
                effect("d_z", 600, Q * math.sin(k * a) * math.sin(k * 400) / (p * k * math.sin(k * L)) - Q * a * 400 / (p * L), 1, "mm")],
               REL7, ROUND7)
    for r in (0.5, 2.0, 10.0):
        t = r * PE
        k = math.sqrt(t / EI)
        v = k * L / 2
        q = 1.0
        f.case("tie-%g" % r, "Beam on pins under 1 N/mm and tension of %g Euler loads" % r,
               (TG, "art. 1.13, tie with lateral load", MEM),
               beam([{"node": "B", "force": [t, 0, 0]}, {"member": "AB", "direction": [0, 0, -1], "q": q}]),
               [effect("M_y", L / 2, q / k ** 2 * (1 - 1 / math.cosh(v)), 1, "N mm"),
                effect("d_z", L / 2, q * L ** 2 / (8 * t) - q / (t * k ** 2) * (1 - 1 / math.cosh(v)), 1, "mm")],
               REL7, ROUND7)
    for r in (0.5, 1.5, 2.5):
        p = r * PE
        k = math.sqrt(p / EI)
        u = k * L / 2
        q = 1.0
        f.case("clamped-even-load-%g" % r, "Beam-column clamped at both ends under 1 N/mm, P = %g Euler loads" % r,
               (TG, "art. 1.11, built-in ends, even load", MEM),
               beam([{"node": "B", "force": [-p, 0, 0]}, {"member": "AB", "direction": [0, 0, -1], "q": q}],
                    start="X Y Z RX RY RZ", end="Y Z RX RY RZ"),
               [effect("M_y", 0, q * L ** 2 / 12 * 3 * (math.tan(u) - u) / (u ** 2 * math.tan(u)), 1, "N mm"),
                effect("M_y", L / 2, q * L ** 2 / 24 * 6 * (u - math.sin(u)) / (u ** 2 * math.sin(u)), 1, "N mm")],
               {"relative": 1e-6}, "closed form; beyond the Euler load on pins rounding is enlarged")
    for r in (0.3, 0.9, 1.6):
        p = r * PE
        u = math.sqrt(p / EI) * L / 2
        chi = 3 * (math.tan(u) - u) / u ** 3
        psi = 3 / (2 * u) * (1 / (2 * u) - 1 / math.tan(2 * u))
        f.case("propped-even-load-%g" % r, "Beam-column clamped at one end under 1 N/mm, P = %g Euler loads" % r,
               (TG, "art. 1.11, one end built in", MEM),
               beam([{"node": "B", "force": [-p, 0, 0]}, {"member": "AB", "direction": [0, 0, -1], "q": 1.0}],
                    start="X Y Z RX RY RZ"),
               [effect("M_y", 0, L ** 2 / 8 * chi / psi, 1, "N mm")], {"relative": 1e-6},
               "closed form; beyond the Euler load on pins rounding is enlarged")
    for a, value, off in ((0.2, 0.0664, 0.006), (0.5, 0.1621, 0.03)):
        f.case("large-movement-%g" % a, "Cantilever, tip load P L2/EI = %g: small-turn theory against the elastica" % a,
               ("K. E. Bisshopp and D. C. Drucker, Q. Appl. Math. 3 (1945)", "deflection of the tip", MEM),
               {"nodes": {"A": [0, 0, 0], "B": [L, 0, 0]}, "members": [{"name": "AB", "bar": "bar", "nodes": ["A", "B"]}],
                "supports": {"A": "X Y Z RX RY RZ", "B": "Y RX RZ"}, "loads": [{"node": "B", "force": [0, 0, -a * EI / L ** 2]}]},
               [movement("B", "Z", -value, L, "L")], {"relative": off},
               "not an error of the solution: turns are taken as small, which costs this much")
    aisc()(f)
    portals(f)
    f.write()


def aisc():
    """The two benchmark bars of AISC 360-10, published to three digits; W14x48, 28 ft."""
    inch, kip = 25.4, 4448.2216
    ksi = kip / inch ** 2
    wide = {"E": 29000 * ksi, "G": 11200 * ksi, "A": 14.1 * inch ** 2, "A_v_y": 1e15, "A_v_z": 4.69 * inch ** 2,
            "I_y": 484 * inch ** 4, "I_z": 484 * inch ** 4, "I_t": 1e6, "why": "W14x48, shear area d tw = 13.8 x 0.34 in2"}
    work = ("ANSI/AISC 360-10, Commentary C2", "Figs. C-C2.2 and C-C2.3, with shear deformation", MEM)
    reason = "published to three digits"
    span = 336 * inch

    def add(f):
        f.bars["W14x48"] = wide
        for p, m, d in ((0, 235, 0.202), (150, 270, 0.230), (300, 316, 0.269), (450, 380, 0.322)):
            f.case("benchmark-1-P%d" % p, "Benchmark 1: 0.2 kip/ft, P = %d kip" % p, work,
                   {"nodes": {"A": [0, 0, 0], "B": [span, 0, 0]},
                    "members": [{"name": "AB", "bar": "W14x48", "nodes": ["A", "B"]}],
                    "supports": {"A": "X Y Z RX RZ", "B": "Y Z RX RZ"},
                    "loads": [{"node": "B", "force": [-p * kip, 0, 0]},
                              {"member": "AB", "direction": [0, 0, -1], "q": 0.2 * kip / (12 * inch)}]},
                   [effect("M_y", span / 2, m, kip * inch, "kip in"), effect("d_z", span / 2, d, inch, "in")],
                   {"relative": 0.004}, reason)
        for p, m, d in ((0, 336, 0.907), (100, 470, 1.34), (150, 601, 1.77), (200, 856, 2.60)):
            f.case("benchmark-2-P%d" % p, "Benchmark 2: cantilever, 1 kip at the tip, P = %d kip" % p, work,
                   {"nodes": {"A": [0, 0, 0], "B": [0, 0, span]},
                    "members": [{"name": "AB", "bar": "W14x48", "nodes": ["A", "B"]}],
                    "supports": {"A": "X Y Z RX RY RZ", "B": "Y RX RZ"},
                    "loads": [{"node": "B", "force": [kip, 0, -p * kip]}]},
                   [effect("M_y", 0, m, kip * inch, "kip in"), movement("B", "X", d, inch, "in")],
                   {"relative": 0.006}, reason + "; area of shear given to three digits")
    return add


def portal(beam_bar, feet, loads, head="Y RX RZ", members=None):
    return {"nodes": {"A": [0, 0, 0], "B": [0, 0, L], "C": [2 * L, 0, L], "D": [2 * L, 0, 0]},
            "members": members or [{"name": "AB", "bar": "bar", "nodes": ["A", "B"]},
                                   {"name": "BC", "bar": beam_bar, "nodes": ["B", "C"]},
                                   {"name": "DC", "bar": "bar", "nodes": ["D", "C"]}],
            "supports": {"A": feet, "D": feet, "B": head, "C": head}, "loads": loads}


def stability(u):
    """Stiffness s and carry-over c of a bar clamped at the far end, per EI/L, in compression u = kL."""
    d = 2 - 2 * math.cos(u) - u * math.sin(u)
    s = u * (math.sin(u) - u * math.cos(u)) / d
    sc = u * (u - math.sin(u)) / d
    return s, sc


def portals(f):
    """A sway portal by slope deflection with stability functions, two unknowns, worked out here."""
    work = ("R. K. Livesley and D. B. Chandler, Stability Functions for Structural Frameworks (1956)",
            "sway portal by slope deflection, solved here by hand formula", MEM)
    for ratio, r in ((0.5, 0.1), (1.0, 0.2), (2.0, 0.3)):
        f.bars["beam%g" % ratio] = bar(I_y=I * 2 * ratio)
        p = r * PE
        u = math.sqrt(p / EI) * L
        s, sc = stability(u)
        kc = EI / L
        kb = EI * ratio / L  # EI_b / 2L, with I_b = 2 ratio I
        H = 500.0
        # Antisymmetric sway: both joints turn by t; each column takes half the force.
        # Joint: (s kc + 6 kb) t - (s + sc) kc D/L = 0; storey: -(s+sc) kc t/L*... + [2(s+sc) - u^2] kc D/L^2 = H/2.
        a11 = s * kc + 6 * kb
        a12 = -(s + sc) * kc / L
        a22 = (2 * (s + sc) - u * u) * kc / L ** 2
        det = a11 * a22 - a12 * a12
        sway = a11 * (H / 2) / det
        turn = -a12 * (H / 2) / det
        foot = kc * (sc * turn - (s + sc) * sway / L)
        f.case("sway-portal-%g-%g" % (ratio, r), "Portal, fixed feet, (Ib/b)/(Ic/h) = %g, P = %g Euler loads on each column, 500 N level" % (ratio, r),
               work, portal("beam%g" % ratio, "X Y Z RX RY RZ",
                            [{"node": "B", "force": [H / 2, 0, -p]}, {"node": "C", "force": [H / 2, 0, -p]}]),
               [movement("B", "X", sway, 1, "mm"), reaction("A", "RY", abs(foot), 1, "N mm", size=True)],
               {"relative": 1e-4}, "the level force changes the columns' axial forces by up to 1e-3, one up and one down: second order of that is left",
               order=2)


def critical():
    f = File("critical-loads", "Elastic critical factors; loads are 1 N unless said, so that a factor is a load. "
             "L = 1000 mm, EI = 1e11 N mm2.", {"bar": bar()})
    unit = EI / L ** 2
    rel = {"relative": 1e-8}
    why = "root of the exact equation; the factor is found to 1e-9"
    tan_root = root(lambda u: math.tan(u) - u, 4.4, 4.6)
    for name, text, foot, head, value in (
            ("pins", "on pins", "X Y Z RX RZ", "X Y RX RZ", math.pi ** 2),
            ("clamped-free", "clamped at the foot, free", "X Y Z RX RY RZ", "Y RX RZ", math.pi ** 2 / 4),
            ("clamped-pinned", "clamped and pinned", "X Y Z RX RY RZ", "X Y RX RZ", tan_root ** 2),
            ("clamped-clamped", "clamped at both ends", "X Y Z RX RY RZ", "X Y RX RY RZ", 4 * math.pi ** 2),
            ("clamped-guided", "clamped, head guided", "X Y Z RX RY RZ", "Y RX RY RZ", math.pi ** 2),
            ("pinned-guided", "pinned, head guided", "X Y Z RX RZ", "Y RX RY RZ", math.pi ** 2 / 4)):
        given = column([{"node": "B", "force": [0, 0, -1]}], foot, head)
        f.case("column-" + name, "Column " + text, (TG, "arts. 2.1 to 2.3", MEM), given,
               [{"what": "critical", "value": value, "unit": unit, "of": "EI/L2"}], rel, why, order=1)
        halved = dict(given)
        halved["nodes"] = {"A": [0, 0, 0], "M": [0, 0, 370], "B": [0, 0, L]}
        halved["members"] = [{"name": "AB", "bar": "bar", "nodes": ["A", "M", "B"]}]
        halved["supports"] = {"A": foot, "B": head, "M": "Y RX RZ"}
        f.case("column-%s-divided" % name, "The same with a node at 370 mm", (TG, "arts. 2.1 to 2.3", MEM), halved,
               [{"what": "critical", "value": value, "unit": unit, "of": "EI/L2"}], rel, why, order=1)
    # Shear.
    for share in (0.02, 0.2):
        ga = PE / share
        f.bars["soft%g" % share] = bar(A_v_z=ga / 40000)
        f.case("shear-%g" % share, "Column on pins that gives in shear, Euler load / GA = %g" % share,
               (TG, "art. 2.17, Engesser", MEM),
               column([{"node": "B", "force": [0, 0, -1]}], "X Y Z RX RZ", "X Y RX RZ", bar_name="soft%g" % share),
               [{"what": "critical", "value": math.pi ** 2 / (1 + share), "unit": unit, "of": "EI/L2"}], rel, why, order=1)
    # Alignment charts: a column with springs that stand for beams.
    chart = ("ANSI/AISC 360-10, Commentary App. 7", "equations of the alignment charts", MEM)

    def held(u, a, b):
        return a * b / 4 * u ** 2 + (a + b) / 2 * (1 - u / math.tan(u)) + 2 * math.tan(u / 2) / u - 1

    def sway(u, a, b):
        return (a * b * u ** 2 - 36) / (6 * (a + b)) - u / math.tan(u)

    for a, b in ((0.5, 0.5), (1, 1), (1, 5), (2, 10), (10, 10), (0.2, 3)):
        lo, hi = math.pi * (1 + 1e-9), 2 * math.pi * (1 - 1e-9)
        u = root(lambda x: held(x, a, b), lo, hi)
        f.case("chart-held-%g-%g" % (a, b), "Column kept from swaying, G_A = %g, G_B = %g" % (a, b), chart,
               column([{"node": "B", "force": [0, 0, -EI / L ** 2]}],
                      {"X": "fixed", "Y": "fixed", "Z": "fixed", "RX": "fixed", "RZ": "fixed", "RY": 2 * EI / (L * a)},
                      {"X": "fixed", "Y": "fixed", "RX": "fixed", "RZ": "fixed", "RY": 2 * EI / (L * b)}),
               [{"what": "effectiveLength", "value": math.pi / u, "unit": 1, "of": "K"}], rel, why, order=1)
        u = root(lambda x: sway(x, a, b), 1e-6, math.pi * (1 - 1e-9))
        f.case("chart-sway-%g-%g" % (a, b), "Column free to sway, G_A = %g, G_B = %g" % (a, b), chart,
               column([{"node": "B", "force": [0, 0, -EI / L ** 2]}],
                      {"X": "fixed", "Y": "fixed", "Z": "fixed", "RX": "fixed", "RZ": "fixed", "RY": 6 * EI / (L * a)},
                      {"Y": "fixed", "RX": "fixed", "RZ": "fixed", "RY": 6 * EI / (L * b)}),
               [{"what": "effectiveLength", "value": math.pi / u, "unit": 1, "of": "K"}], rel, why, order=1)
    # Portals.
    loads = [{"node": "B", "force": [0, 0, -1]}, {"node": "C", "force": [0, 0, -1]}]
    work = (TG, "art. 2.4, portal; equation derived from stability functions", MEM)
    for ratio in (0.5, 1.0, 2.0):
        f.bars["beam%g" % ratio] = bar(I_y=I * 2 * ratio)
        pinned = root(lambda u: u * math.tan(u) - 6 * ratio, 1e-6, math.pi / 2 - 1e-12)
        fixed = root(lambda u: u / math.tan(u) + 6 * ratio, math.pi / 2, math.pi - 1e-12)

        def stays(u, far_fixed):
            s, sc = stability(u)
            own = s if far_fixed else s - sc * sc / s
            return own + 2 * ratio

        still_pinned = root(lambda u: stays(u, False), math.pi + 1e-6, 4.49)
        still_fixed = root(lambda u: stays(u, True), 4.4935, 2 * math.pi - 1e-6)
        for name, feet, head, u in (("sway-pinned", "X Y Z RX RZ", "Y RX RZ", pinned),
                                    ("sway-fixed", "X Y Z RX RY RZ", "Y RX RZ", fixed),
                                    ("held-pinned", "X Y Z RX RZ", "X Y RX RZ", still_pinned),
                                    ("held-fixed", "X Y Z RX RY RZ", "X Y RX RZ", still_fixed)):
            f.case("portal-%s-%g" % (name, ratio), "Portal, %s feet, (Ib/b)/(Ic/h) = %g" % (name, ratio), work,
                   portal("beam%g" % ratio, feet, loads, head),
                   [{"what": "critical", "value": u * u, "unit": unit, "of": "EIc/h2"}], {"relative": 1e-6},
                   "columns shorten by 1e-9, and the beam takes no axial force", order=1)
    # A column that leans on another.
    u = root(lambda x: math.tan(x) / x - 2, 0.5, 1.5)
    given = {"nodes": {"A": [0, 0, 0], "B": [0, 0, L], "C": [2 * L, 0, L], "D": [2 * L, 0, 0]},
             "members": [{"name": "AB", "bar": "bar", "nodes": ["A", "B"]},
                         {"name": "BC", "bar": "bar", "nodes": ["B", "C"], "start": {"aboutY": "free"}, "end": {"aboutY": "free"}},
                         {"name": "DC", "bar": "bar", "nodes": ["D", "C"], "start": {"aboutY": "free"}, "end": {"aboutY": "free"}}],
             "supports": {"A": "X Y Z RX RY RZ", "D": "X Y Z RX RY RZ", "B": "Y RX RZ", "C": "Y RX RZ"}, "loads": loads}
    f.case("leaning-column", "Cantilever column that holds up a leaning one with the same load",
           ("P-delta force of the leaning column P D/h against the cantilever's P D/(h (tan u/u - 1))", "tan u = 2 u", DER), given,
           [{"what": "critical", "value": u * u, "unit": unit, "of": "EI/h2"}], {"relative": 1e-6},
           "the beam stretches by 1e-9", order=1)
    # A brace between pins bows by itself: nodes do not move.
    given = {"nodes": {"A": [0, 0, 0], "B": [L, 0, 0], "C": [0, 0, L]},
             "members": [{"name": "CB", "bar": "strut", "nodes": ["C", "B"], "start": {"aboutY": "free", "aboutZ": "free"}, "end": {"aboutY": "free", "aboutZ": "free"}},
                         {"name": "AB", "bar": "bar", "nodes": ["A", "B"], "start": {"aboutY": "free", "aboutZ": "free"}, "end": {"aboutY": "free", "aboutZ": "free"}}],
             "supports": {"A": "X Y Z RX RY RZ", "C": "X Y Z RX RY RZ", "B": "Y"}, "loads": [{"node": "B", "force": [0, 0, 1]}]}
    f.bars["strut"] = bar(I_z=2e6, A=1e6)
    f.case("strut-between-pins", "Strut of a bracket, at 45 degrees between pins: it bows, its nodes stay",
           (TG, "art. 2.1, Euler", MEM), given,
           [{"what": "critical", "value": math.pi ** 2 / 2 / math.sqrt(2), "unit": unit, "of": "EI/L2"}], rel,
           "strut of length L sqrt 2 under P sqrt 2", order=1)
    # Spring at mid-height.
    for beta in (4.0, 8.0, 20.0):
        b = beta * PE / L

        def half(v):
            p = 4 * v * v * EI / L ** 2
            return math.tan(v) - v * (1 - 4 * p / (b * L))

        if beta < 16:
            v = root(half, math.pi / 2 + 1e-9, math.pi - 1e-9)
            value = 4 * v * v
        else:
            value = 4 * math.pi ** 2
        given = {"nodes": {"A": [0, 0, 0], "M": [0, 0, L / 2], "B": [0, 0, L]},
                 "members": [{"name": "AB", "bar": "bar", "nodes": ["A", "M", "B"]}],
                 "supports": {"A": "X Y Z RX RZ", "B": "X Y RX RZ",
                              "M": {"X": b, "Y": "fixed", "RX": "fixed", "RZ": "fixed"}},
                 "loads": [{"node": "B", "force": [0, 0, -1]}]}
        f.case("spring-at-middle-%g" % beta, "Column on pins, held at the middle by a spring of %g Pe/L" % beta,
               (TG, "art. 2.6, bar with an elastic support at the middle", MEM), given,
               [{"what": "critical", "value": value, "unit": unit, "of": "EI/L2"}], rel, why, order=1)
    # Stepped column.
    for ratio in (0.3, 0.6):
        f.bars["upper%g" % ratio] = bar(I_y=I * ratio)
        def step(p):
            upper = math.sqrt(p / (ratio * EI))
            lower = math.sqrt(p / EI)
            return math.tan(upper * L / 2) * math.tan(lower * L / 2) - upper / lower

        top = (math.pi / L) ** 2 * ratio * EI
        p = root(step, 1e-6 * top, top * (1 - 1e-9))
        given = {"nodes": {"A": [0, 0, 0], "M": [0, 0, L / 2], "B": [0, 0, L]},
                 "members": [{"name": "AM", "bar": "bar", "nodes": ["A", "M"]}, {"name": "MB", "bar": "upper%g" % ratio, "nodes": ["M", "B"]}],
                 "supports": {"A": "X Y Z RX RY RZ", "B": "Y RX RZ", "M": "Y RX RZ"},
                 "loads": [{"node": "B", "force": [0, 0, -1]}]}
        f.case("stepped-%g" % ratio, "Clamped column, upper half with %g of the second moment" % ratio,
               (TG, "art. 2.14, tan k1 l1 tan k2 l2 = k1/k2, 1 above", MEM), given,
               [{"what": "critical", "value": p / unit, "unit": unit, "of": "EI/L2"}], rel, why, order=1)
    # Weight along a cantilever.
    for n in (4, 16):
        names = ["N%d" % i for i in range(n + 1)]
        given = {"nodes": {names[i]: [0, 0, L * i / n] for i in range(n + 1)},
                 "members": [{"name": "AB", "bar": "bar", "nodes": names}],
                 "supports": {"N0": "X Y Z RX RY RZ", **{x: "Y RX RZ" for x in names[1:]}},
                 "loads": [{"member": "AB", "direction": [0, 0, -1], "q": 1 / L}]}
        f.case("own-weight-%d" % n, "Clamped column under its own weight, %d segments" % n,
               (TG, "art. 2.12, 7.837 EI/L2", MEM), given,
               [{"what": "critical", "value": 7.83735, "unit": unit, "of": "EI/L2"}],
               {"relative": 0.03 if n == 4 else 0.002},
               "the axial force of a segment is taken as its mean: the error falls with the square of the number of segments", order=1)
    f.write()


def joints():
    f = File("joints-that-give", "Springs at member ends, free play, stops, axial springs. L = 1000 mm, EI = 1e11.", {"bar": bar()})
    rel = {"relative": 1e-7}
    why = "closed form"
    mf = ("G. R. Monforton and T. S. Wu, J. Struct. Div. ASCE 89 (1963)", "beam with springs at both ends", MEM)
    for a in (0.5, 2.0, 8.0, 40.0):
        k = a * EI / L
        m = L ** 2 / 12 / (1 + 2 / a)
        ends = {"start": {"aboutY": k}, "end": {"aboutY": k}}
        given = beam([{"member": "AB", "direction": [0, 0, -1], "q": 1}], start="X Y Z RX RY RZ", end="Y Z RX RY RZ")
        given["members"][0].update(ends)
        f.case("springs-%g" % a, "Beam with end springs of %g EI/L under 1 N/mm" % a, mf, given,
               [reaction("A", "RY", m, 1, "N mm", size=True), effect("M_y", L / 2, L ** 2 / 8 - m, 1, "N mm"),
                effect("d_z", L / 2, 5 * L ** 4 / (384 * EI) - m * L ** 2 / (8 * EI), 1, "mm")], rel, why, order=1)
    for a in (1.0, 5.0, 25.0):
        # Portal with springs between columns and beam, fixed feet, level force: the spring softens the beam.
        f.bars["beam1"] = bar(I_y=2 * I)
        kb = 6 * EI / L  # 6 E I_b / b with I_b = 2 I, b = 2 L
        spring = a * EI / L
        eff = 1 / (1 / kb + 1 / spring)
        kc = EI / L
        H = 500.0
        a11, a12, a22 = 4 * kc + eff, -6 * kc / L, 12 * kc / L ** 2
        det = a11 * a22 - a12 ** 2
        sway, turn = a11 * H / 2 / det, -a12 * H / 2 / det
        given = portal("beam1", "X Y Z RX RY RZ", [{"node": "B", "force": [H / 2, 0, 0]}, {"node": "C", "force": [H / 2, 0, 0]}])
        given["members"][1].update({"start": {"aboutY": spring}, "end": {"aboutY": spring}})
        f.case("springy-portal-%g" % a, "Portal with fixed feet and springs of %g EI/L at its beam, 500 N level" % a,
               ("Slope deflection with the beam's 6 EI/b in series with the spring", "worked out beside the data", DER), given,
               [movement("B", "X", sway, 1, "mm"), reaction("A", "RY", abs(kc * (2 * turn - 6 * sway / L)), 1, "N mm", size=True),
                reaction("D", "Z", 2 * eff * turn / (2 * L), 1, "N", size=True)],
               {"relative": 1e-6}, "columns still stretch by 1e-9", order=1)
        # Its critical load: the spring joins the beam in u cot u = -6 ratio.
        ratio = eff / (6 * kc)
        u = root(lambda x: x / math.tan(x) + 6 * ratio, math.pi / 2, math.pi - 1e-12)
        given = portal("beam1", "X Y Z RX RY RZ", [{"node": "B", "force": [0, 0, -1]}, {"node": "C", "force": [0, 0, -1]}])
        given["members"][1].update({"start": {"aboutY": spring}, "end": {"aboutY": spring}})
        f.case("springy-portal-critical-%g" % a, "Sway buckling of the same portal", (TG, "art. 2.4 with the spring in series with the beam", MEM), given,
               [{"what": "critical", "value": u * u, "unit": EI / L ** 2, "of": "EIc/h2"}], {"relative": 1e-6}, "columns still stretch by 1e-9", order=1)
    # Axial springs.
    f.bars["rod"] = bar(A=100.0)
    for k in (2000.0, 50000.0):
        given = beam([{"node": "B", "force": [300, 0, 0]}], bar_name="rod")
        given["members"][0].update({"start": {"axial": k}, "end": {"axial": 3 * k}})
        f.case("axial-springs-%g" % k, "Rod with springs of %g and %g N/mm at its ends, 300 N" % (k, 3 * k),
               ("Springs in series", "", DER), given,
               [movement("B", "X", 300 * (L / (E * 100) + 1 / k + 1 / (3 * k)), 1, "mm")], rel, why, order=1)
    # Gap, then a stiffness, then a second one.
    series = lambda k: 1 / (L / (E * 100) + 1 / k)
    for force in (-200.0, 400.0, 4000.0):
        play, k, second, k2 = 1.5, 800.0, 3.0, 2500.0
        given = beam([{"node": "B", "force": [force, 0, 0]}], bar_name="rod")
        given["members"][0]["start"] = {"axial": {"play": play, "stiffness": k, "secondFrom": second, "secondStiffness": k2}}
        size = abs(force)
        first = k * (second - play)
        give = play + size / k if size <= first else second + (size - first) / k2
        f.case("slip-%g" % force, "Rod in a slot: 1.5 mm play, 800 N/mm, from 3 mm on 2500 N/mm; %g N" % force,
               ("Law of the joint plus the rod's own stretch", "", DER), given,
               [movement("B", "X", math.copysign(give + size * L / (E * 100), force), 1, "mm")], rel, why, order=1)
    # Play in a joint of a cantilever.
    for play in (0.002, 0.01):
        given = {"nodes": {"A": [0, 0, 0], "B": [L, 0, 0]},
                 "members": [{"name": "AB", "bar": "bar", "nodes": ["A", "B"], "start": {"aboutY": {"play": play, "stiffness": 5e8}}}],
                 "supports": {"A": "X Y Z RX RY RZ", "B": "Y RX RZ"}, "loads": [{"node": "B", "force": [0, 0, -100]}]}
        f.case("play-cantilever-%g" % play, "Cantilever whose joint turns by %g before it holds with 5e8 N mm, 100 N at the tip" % play,
               ("Turn of the joint times the length, plus the bending of the bar", "", DER), given,
               [movement("B", "Z", -(play * L + 100 * L / 5e8 * L + 100 * L ** 3 / (3 * EI)), 1, "mm"),
                reaction("A", "RY", -100 * L, 1, "N mm")], rel, why, order=1)
    # A fixed-ended beam whose right joint has play: it does not take moment until its end turns by the play.
    for q, play in ((1.0, 0.0005), (4.0, 0.0005)):
        turn = q * L ** 3 / (48 * EI)  # propped cantilever: turn of the pinned end
        m = max(0.0, (turn - play) * 4 * EI / L)
        given = beam([{"member": "AB", "direction": [0, 0, -1], "q": q}], start="X Y Z RX RY RZ", end="Y Z RX RY RZ")
        given["members"][0]["end"] = {"aboutY": {"play": play}}
        f.case("stop-at-end-%g" % q, "Beam clamped at the left, its right end turns freely by 0.0005 to a stop; %g N/mm" % q,
               ("Propped cantilever turns by q L3/48EI; beyond the play 4 EI/L holds", "", DER), given,
               [reaction("B", "RY", m, 1, "N mm", size=True), reaction("A", "RY", q * L ** 2 / 8 - m / 2, 1, "N mm", size=True),
                {"what": "inPlay", "hold": "joint of member AB at node B about y", "value": 0 if m > 0 else 1, "unit": 1, "of": "yes"}],
               {"relative": 1e-7, "absolute": 1e-6}, why, order=1)
    f.write()


def one_way():
    f = File("one-way", "Feet that lift, gaps, ties that slacken. L = 1000 mm, EI = 1e11.", {"bar": bar()})
    rel = {"relative": 1e-7, "absolute": 1e-6}
    why = "closed form; forces that are zero are so to 1e-6 N"
    foot = {"X": "free", "Y": "fixed", "Z": {"against": "NEGATIVE"}, "RX": "fixed", "RZ": "fixed"}
    two = {"nodes": {"A": [0, 0, 0], "B": [L, 0, 0], "C": [2 * L, 0, 0]},
           "members": [{"name": "AC", "bar": "bar", "nodes": ["A", "B", "C"]}],
           "supports": {"A": "X Y Z RX RZ", "B": dict(foot), "C": dict(foot)}}
    p = 1000.0
    f.case("two-spans-lift", "Two spans on one-way supports, 1000 N in the middle of the first: the far end lifts",
           ("Simple span with an overhang that stays straight: end slope P L2/16EI", "", DER),
           dict(two, loads=[{"member": "AC", "direction": [0, 0, -1], "P": p, "at": 500}]),
           [reaction("A", "Z", p / 2), reaction("B", "Z", p / 2), reaction("C", "Z", 0),
            movement("C", "Z", p * L ** 3 / (16 * EI), 1, "mm"),
            {"what": "open", "hold": "support of node C along Z", "value": 1, "unit": 1, "of": "yes"}], rel, why, order=1)
    f.case("two-spans-stay", "The same with 1 N/mm all along: nothing lifts",
           ("Clapeyron's three moments: 13/32 P and 3/8 q L of the end reactions", "superposed", DER),
           dict(two, loads=[{"member": "AC", "direction": [0, 0, -1], "P": p, "at": 500},
                            {"member": "AC", "direction": [0, 0, -1], "q": 1}]),
           [reaction("A", "Z", 13 / 32 * p + 375), reaction("C", "Z", 375 - 3 / 32 * p),
            {"what": "open", "hold": "support of node C along Z", "value": 0, "unit": 1, "of": "yes"}], rel, why, order=1)
    for q in (1.0, 6.0):
        free = 5 * q * L ** 4 / (384 * EI)
        gap = 0.3
        r = max(0.0, 48 * EI / L ** 3 * (free - gap))
        given = beam([{"member": "AB", "direction": [0, 0, -1], "q": q}], inner=(500.0,),
                     more={"N0": {"Z": {"against": "NEGATIVE", "gap": gap}}})
        f.case("gap-%g" % q, "Beam over a stop 0.3 mm below its middle, %g N/mm" % q,
               ("Deflection of the free beam beyond the gap times 48 EI/L3", "", DER), given,
               [reaction("N0", "Z", r), movement("N0", "Z", -min(free, gap), 1, "mm"), reaction("A", "Z", q * L / 2 - r / 2)], rel, why, order=1)
    for k in (500.0, 20000.0):
        q, gap = 6.0, 0.3
        free = 5 * q * L ** 4 / (384 * EI)
        r = (free - gap) / (L ** 3 / (48 * EI) + 1 / k)
        given = beam([{"member": "AB", "direction": [0, 0, -1], "q": q}], inner=(500.0,),
                     more={"N0": {"Z": {"against": "NEGATIVE", "gap": gap, "stiffness": k}}})
        f.case("soft-stop-%g" % k, "The same with a stop of %g N/mm, 6 N/mm" % k,
               ("Deflection of the free beam beyond the gap, beam and stop in series", "", DER), given,
               [reaction("N0", "Z", r), movement("N0", "Z", -(gap + r / k), 1, "mm")], rel, why, order=1)
    # Braced bay with ties.
    h, b = 1000.0, 1500.0
    f.bars["post"] = bar(A=2000.0)
    f.bars["tie"] = bar(A=150.0)
    pins = {"start": {"aboutY": "free", "aboutZ": "free"}, "end": {"aboutY": "free", "aboutZ": "free"}}
    tie = {"start": {"aboutY": "free", "aboutZ": "free", "axial": {"against": "POSITIVE"}}, "end": {"aboutY": "free", "aboutZ": "free"}}
    d = math.hypot(b, h)
    for H in (800.0, -800.0):
        given = {"nodes": {"A": [0, 0, 0], "B": [0, 0, h], "C": [b, 0, h], "D": [b, 0, 0]},
                 "members": [dict({"name": "AB", "bar": "post", "nodes": ["A", "B"]}, **pins), dict({"name": "BC", "bar": "post", "nodes": ["B", "C"]}, **pins),
                             dict({"name": "DC", "bar": "post", "nodes": ["D", "C"]}, **pins),
                             dict({"name": "AC", "bar": "tie", "nodes": ["A", "C"]}, **tie), dict({"name": "DB", "bar": "tie", "nodes": ["D", "B"]}, **tie)],
                 "supports": {"A": "X Y Z RX RY RZ", "D": "X Y Z RX RY RZ", "B": "Y", "C": "Y"},
                 "loads": [{"node": "B", "force": [H / 2, 0, 0]}, {"node": "C", "force": [H / 2, 0, 0]}]}
        # Statically determinate once one tie is slack: forces by joints, movement of the loaded corner by virtual work.
        n = abs(H) * d / b
        post = -abs(H) * h / b
        beam_force = -abs(H) / 2
        # The tie's head is pushed by half the force, the other corner hands its half over through the beam.
        far, near, slack, taut = ("C", "B", "DB", "AC") if H > 0 else ("B", "C", "AC", "DB")
        # movement of the tie's head: tie stretch and post shortening
        u = (n * d / (E * 150) * d - post * h / (E * 2000) * h) / b
        u2 = u + abs(beam_force) * b / (E * 2000)
        name = "DC" if H > 0 else "AB"
        f.case("ties-%g" % H, "Pinned bay with crossed ties, level %g N: one tie slackens" % H,
               ("Statics of a pinned bay, movement by virtual work", "", DER), given,
               [{"what": "axial", "member": taut, "value": n, "unit": 1, "of": "N"},
                {"what": "axial", "member": slack, "value": 0, "unit": 1, "of": "N"},
                {"what": "axial", "member": name, "value": post, "unit": 1, "of": "N"},
                movement(far, "X", math.copysign(u, H), 1, "mm"), movement(near, "X", math.copysign(u2, H), 1, "mm"),
                {"what": "open", "hold": "member %s along its axis" % slack, "value": 1, "unit": 1, "of": "yes"}], rel, why, order=1)
    # A frame that turns over.
    def table(H, free):
        feet = {"X": "fixed", "Y": "fixed", "Z": {"against": "NEGATIVE"}, "RX": "fixed", "RZ": "fixed", "freeWhenLifted": free}
        given = portal("post", "", [{"node": "B", "force": [H, 0, -100]}, {"node": "C", "force": [0, 0, -100]}])
        for member in given["members"]:
            member["bar"] = "post"
        given["supports"]["A"] = dict(feet)
        given["supports"]["D"] = dict(feet)
        return given

    f.case("overturns", "Portal on feet that may lift: 200 N down, 250 N level at 1000 mm against 100 N at 2000 mm",
           ("Moments about the far foot: 250 L > 100 * 2 L", "", DER), table(250.0, False),
           [{"what": "unstable", "value": 1, "unit": 1, "of": "yes"}], rel, "yes or no", order=1)
    f.case("stands", "The same with 150 N level", ("Moments about the feet", "", DER), table(150.0, False),
           [{"what": "unstable", "value": 0, "unit": 1, "of": "yes"}, reaction("A", "Z", 100 - 75), reaction("D", "Z", 100 + 75)], rel, why, order=1)
    # Contact strut.
    for H in (300.0, -300.0):
        f.bars["strip"] = bar(A=200.0)
        given = beam([{"node": "B", "force": [H, 0, 0]}], bar_name="strip", end={"Y": "fixed", "Z": "fixed", "X": 40.0})
        given["members"][0]["start"] = {"axial": {"against": "NEGATIVE"}}
        k = E * 200 / L
        u = H / 40.0 if H > 0 else H / (40.0 + k)
        f.case("contact-%g" % H, "Strut that only pushes, beside a spring of 40 N/mm, %g N" % H,
               ("Springs side by side; the strut parts when pulled", "", DER), given,
               [movement("B", "X", u, 1, "mm")], rel, why, order=1)
    # Beam on springs that cannot pull, all sets of contacts tried one by one.
    combined_supports(f)
    f.write()


def solve(a, b):
    n = len(b)
    m = [row[:] + [b[i]] for i, row in enumerate(a)]
    for i in range(n):
        p = max(range(i, n), key=lambda r: abs(m[r][i]))
        m[i], m[p] = m[p], m[i]
        for r in range(n):
            if r != i:
                x = m[r][i] / m[i][i]
                m[r] = [u - x * v for u, v in zip(m[r], m[i])]
    return [m[i][n] / m[i][i] for i in range(n)]


def combined_supports(f):
    """Free beam on five one-way springs: force method on the beam's flexibility, 32 sets tried, one fits."""
    spots = [0.0, 700.0, 1500.0, 2300.0, 3000.0]
    k = 400.0
    for at, p in ((500.0, 2000.0), (1900.0, 1500.0), (2900.0, 900.0)):
        solution = None
        for signs in product((0, 1), repeat=5):
            s = [i for i in range(5) if signs[i]]
            if len(s) < 2:
                continue
            # Unknown spring forces R_i (i in s) and rigid body a + b x of a beam on the first and last of s.
            first, last = spots[s[0]], spots[s[-1]]
            span = last - first

            def flex(x, y):
                """Deflection at x by a unit force at y: beam on supports at first and last, overhangs included."""
                def bend(v):
                    # moment diagram pieces of unit force at v on the bar first..last with overhangs
                    return v
                # Integrate m m /EI with moments of both unit forces, exactly, piecewise linear.
                grid = sorted({0.0, 3000.0, first, last, x, y})
                def moment(t, v):
                    rl = (v - first) / span
                    rf = 1 - rl
                    m = 0.0
                    if t > first:
                        m += rf * (t - first)
                    if t > last:
                        m += rl * (t - last)
                    if t > v:
                        m -= (t - v)
                    return m
                total = 0.0
                for u0, u1 in zip(grid, grid[1:]):
                    if u1 - u0 < 1e-12:
                        continue
                    mid = 0.5 * (u0 + u1)
                    total += (u1 - u0) / 6 * (moment(u0, x) * moment(u0, y) + 4 * moment(mid, x) * moment(mid, y) + moment(u1, x) * moment(u1, y))
                return total / EI

            # Down movements w_i = a + b x_i + flex(x_i, at) p - sum_j flex(x_i, x_j) R_j = R_i / k ; equilibrium.
            n = len(s)
            A = [[0.0] * (n + 2) for _ in range(n + 2)]
            B = [0.0] * (n + 2)
            for r, i in enumerate(s):
                for c, j in enumerate(s):
                    A[r][c] = flex(spots[i], spots[j]) + (1 / k if i == j else 0)
                A[r][n], A[r][n + 1] = -1.0, -spots[i]
                B[r] = flex(spots[i], at) * p
            for c, j in enumerate(s):
                A[n][c], A[n + 1][c] = 1.0, spots[j]
            B[n], B[n + 1] = p, p * at
            x = solve(A, B)
            forces, a, slope = x[:n], x[n], x[n + 1]
            gaps = {}
            for i in range(5):
                w = a + slope * spots[i] + flex(spots[i], at) * p - sum(flex(spots[i], spots[j]) * forces[c] for c, j in enumerate(s))
                gaps[i] = w
            if all(r >= -1e-9 for r in forces) and all(gaps[i] <= 1e-9 for i in range(5) if i not in s):
                assert solution is None or len(solution[0]) == n
                solution = (s, forces, gaps)
        s, forces, gaps = solution
        names = ["S%d" % i for i in range(5)]
        supports = {names[i]: {"Y": "fixed", "RX": "fixed", "RZ": "fixed", "Z": {"against": "NEGATIVE", "stiffness": k}} for i in range(5)}
        supports["S0"]["X"] = "fixed"
        given = {"nodes": {names[i]: [spots[i], 0, 0] for i in range(5)},
                 "members": [{"name": "AB", "bar": "bar", "nodes": names}], "supports": supports,
                 "loads": [{"member": "AB", "direction": [0, 0, -1], "P": p, "at": at}]}
        expected = [reaction(names[i], "Z", forces[s.index(i)] if i in s else 0.0) for i in range(5)]
        lifted = [i for i in range(5) if i not in s]
        if lifted:
            expected.append(movement(names[lifted[-1]], "Z", -gaps[lifted[-1]], 1, "mm"))
        f.case("five-springs-%g" % at, "Loose beam on five springs that cannot pull, %g N at %g mm" % (p, at),
               ("Force method; all 32 sets of contacts tried, the one without pull or overlap taken", "worked out beside the data", DER),
               given, expected, {"relative": 1e-6, "absolute": 1e-4}, "solved by elimination in the script", order=1)


def frequencies():
    m = 0.01  # kg/mm, given as a load
    f = File("frequencies", "Natural frequencies, Hz. Mass is that of a downward line load of 0.01 kg/mm. L = 1000 mm, EI = 1e11 N mm2.",
             {"bar": bar(I_z=1e12, I_t=1e12)})
    q = m * 9.80665
    table = ("R. D. Blevins, Formulas for Natural Frequency and Mode Shape (1979)", "Table 8-1, roots of the frequency equation found here", MEM)
    base = math.sqrt(EI * 1000 / m) / (2 * math.pi * L ** 2)

    def roots(fn, guesses):
        return [root(fn, g - 0.2, g + 0.2) for g in guesses]

    clamped = roots(lambda x: math.cos(x) * math.cosh(x) - 1, (4.730, 7.853, 10.996))
    free = roots(lambda x: math.cos(x) * math.cosh(x) + 1, (1.875, 4.694, 7.855))
    propped = roots(lambda x: math.tan(x) - math.tanh(x), (3.927, 7.069, 10.210))
    load = [{"member": "AB", "direction": [0, 0, -1], "q": q}]
    sets = (("pins", "X Y Z RX RZ", "Y Z RX RZ", [math.pi, 2 * math.pi, 3 * math.pi]),
            ("clamped-clamped", "X Y Z RX RY RZ", "X Y Z RX RY RZ", clamped),
            ("clamped-free", "X Y Z RX RY RZ", "Y RX RZ", free),
            ("clamped-pinned", "X Y Z RX RY RZ", "X Y Z RX RZ", propped),
            ("guided-pinned", "X Y RX RY RZ", "X Y Z RX RZ", [math.pi / 2, 3 * math.pi / 2, 5 * math.pi / 2]))
    for name, a, b, lam in sets:
        given = beam(load, start=a, end=b)
        f.case("beam-" + name, "Beam, " + name, table, given,
               [{"what": "frequency", "mode": i + 1, "value": lam[i] ** 2 * base, "unit": 1, "of": "Hz"} for i in range(3)],
               {"relative": 2e-4}, "16 pieces with cubic lines err by (λ/16)^4/1440: 1.6e-4 in the third mode", pieces=16, order=1)
        given = beam(load, start=a, end=b)
        f.case("beam-%s-coarse" % name, "The same in four pieces", table, given,
               [{"what": "frequency", "mode": 1, "value": lam[0] ** 2 * base, "unit": 1, "of": "Hz"}],
               {"relative": 2e-3}, "four pieces err by up to 0.15 % in the first mode", pieces=4, order=1)
    # Springs at the ends: symmetric beam on pins with rotational springs.
    for a in (1.0, 10.0):
        # Boundary: w = 0, EI w'' = k w'. Even modes about the middle: cos and cosh shapes.
        def even(x):
            h = x / 2
            return a * (math.tan(h) + math.tanh(h)) + 2 * x

        lo, hi = math.pi + 1e-9, 2 * math.pi - 1e-9
        lam = root(even, lo, hi)
        given = beam(load, start="X Y Z RX RY RZ", end="X Y Z RX RY RZ")
        given["members"][0].update({"start": {"aboutY": a * EI / L}, "end": {"aboutY": a * EI / L}})
        f.case("beam-springs-%g" % a, "Beam with springs of %g EI/L at its ends" % a,
               ("Even shape cos, cosh with w = 0 and EI w'' = k w' at the ends", "a (tan λ/2 + tanh λ/2) + 2 λ = 0", DER), given,
               [{"what": "frequency", "mode": 1, "value": lam ** 2 * base, "unit": 1, "of": "Hz"}], {"relative": 1e-4}, "16 pieces", pieces=16, order=1)
    # Point masses.
    mass = 20.0
    given = {"nodes": {"A": [0, 0, 0], "B": [L, 0, 0]}, "members": [{"name": "AB", "bar": "bar", "nodes": ["A", "B"]}],
             "supports": {"A": "X Y Z RX RY RZ", "B": "Y RX RZ"}, "loads": [{"node": "B", "force": [0, 0, -mass * 9.80665]}]}
    f.case("mass-at-tip", "Cantilever without mass, 20 kg at its tip", ("Spring 3 EI/L3", "", DER), given,
           [{"what": "frequency", "mode": 1, "value": math.sqrt(3 * EI / L ** 3 * 1000 / mass) / (2 * math.pi), "unit": 1, "of": "Hz"}],
           {"relative": 1e-8}, "closed form", order=1)
    # Beam with its own mass and a mass in the middle: symmetric mode, tan λ/2 - tanh λ/2 = 4 m L/(M λ)... with λ/2.
    for share in (0.5, 2.0):
        big = share * m * L

        def middle(x):
            h = x / 2
            return share * x / 4 * (math.tan(h) - math.tanh(h)) - 1

        lam = root(middle, 1e-3, math.pi - 1e-9)
        given = beam(load + [{"node": "N0", "force": [0, 0, -big * 9.80665]}], inner=(500.0,), start="X Y Z RX RZ", end="X Y Z RX RZ", more={"N0": "Y RX RZ"})
        f.case("mass-at-middle-%g" % share, "Beam on pins with %g of its mass more at the middle" % share,
               ("Shear at the middle sets half the mass in motion", "M λ/(4 m L) (tan λ/2 - tanh λ/2) = 1", DER), given,
               [{"what": "frequency", "mode": 1, "value": lam ** 2 * base, "unit": 1, "of": "Hz"}], {"relative": 1e-4}, "8 pieces per half", order=1)
    # A portal that sways with a heavy beam.
    f.bars["stiffbeam"] = bar(I_y=1e12, I_z=1e12, I_t=1e12)
    for name, feet, k in (("fixed", "X Y Z RX RY RZ", 24), ("pinned", "X Y Z RX RZ", 6)):
        given = portal("stiffbeam", feet, [{"node": "B", "force": [0, 0, -50 * 9.80665]}, {"node": "C", "force": [0, 0, -50 * 9.80665]}])
        f.case("sway-" + name, "Portal with %s feet, stiff beam, 100 kg at its corners" % name, ("Spring %d EI/h3" % k, "", DER), given,
               [{"what": "frequency", "mode": 1, "value": math.sqrt(k * EI / L ** 3 * 1000 / 100.0) / (2 * math.pi), "unit": 1, "of": "Hz"}],
               {"relative": 1e-5}, "the beam bends by 1e-6", order=1)
    # A rod along its axis, standing: mass by its line load.
    given = {"nodes": {"A": [0, 0, 0], "B": [0, 0, L]}, "members": [{"name": "AB", "bar": "rod", "nodes": ["A", "B"]}],
             "supports": {"A": "X Y Z RX RY RZ", "B": "X Y RX RY RZ"}, "loads": load}
    f.case("rod", "Clamped rod along its axis, bending kept from mattering by its length",
           (table[0], "Table 8-16, longitudinal: (2n-1)/4L sqrt(EA/m)", MEM), dict(given, members=[{"name": "AB", "bar": "softrod", "nodes": ["A", "B"]}]),
           [{"what": "frequency", "mode": 1, "value": math.sqrt(E * 1.0 * 1000 / m) / (4 * L), "unit": 1, "of": "Hz"}],
           {"relative": 1e-3}, "16 pieces with even stretch", pieces=16, order=1)
    f.bars["softrod"] = bar(A=1.0, I_y=1e8, I_z=1e8, I_t=1e12)
    f.write()


second_order()
critical()
joints()
one_way()
frequencies()
