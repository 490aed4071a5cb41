"""Writes influence.json: influence lines and moving-load maxima of continuous beams of equal spans.

Method: the three-moment equation for a single force (Clapeyron 1857), solved here; nothing of the
program under test is used. Published values are marked as such.
"""

import json
import math
import pathlib

SPAN = 3000
TENTHS = [k / 10 for k in range(1, 10)]
CLAPEYRON = {
    "work": "three-moment equation (Clapeyron 1857)",
    "place": "solved by influence.py beside this file",
    "confidence": "derived from mechanics",
}


def support_moments(spans, loaded, a):
    """Moments over the bearings per P L, sagging positive, force at a L in span `loaded` from 0."""
    n = spans - 1
    rows = [[0.0] * n + [0.0] for _ in range(n)]
    for i in range(n):
        rows[i][i] = 4.0
        if i > 0:
            rows[i][i - 1] = 1.0
        if i < n - 1:
            rows[i][i + 1] = 1.0
        if loaded == i:
            rows[i][n] -= a * (1 - a * a)
        if loaded == i + 1:
            b = 1 - a
            rows[i][n] -= b * (1 - b * b)
    for i in range(n):
        for k in range(i + 1, n):
            f = rows[k][i] / rows[i][i]
            for c in range(i, n + 1):
                rows[k][c] -= f * rows[i][c]
    x = [0.0] * n
    for i in reversed(range(n)):
        x[i] = (rows[i][n] - sum(rows[i][k] * x[k] for k in range(i + 1, n))) / rows[i][i]
    return [0.0] + x + [0.0]


def reactions(spans, loaded, a):
    m = support_moments(spans, loaded, a)
    r = [0.0] * (spans + 1)
    for s in range(spans):
        left = (m[s + 1] - m[s]) + ((1 - a) if s == loaded else 0)
        r[s] += left
        r[s + 1] += (1 if s == loaded else 0) - left
    return r


def sagging(spans, x):
    """Moment under the force at x L of the first span."""
    return x * (1 - x) + x * support_moments(spans, 0, x)[1]


def peak(f, low, high):
    g = (math.sqrt(5) - 1) / 2
    for _ in range(100):
        one, two = high - g * (high - low), low + g * (high - low)
        if f(one) > f(two):
            high = two
        else:
            low = one
    return (low + high) / 2


def expected(what, value, tolerance, reason):
    return {"what": what, "value": value, "tolerance": tolerance, "toleranceReason": reason}


def hogging_lines():
    for spans in range(2, 6):
        for loaded in range(min(spans, 2)):
            yield {
                "id": f"hogging-{spans}-spans-load-in-{loaded + 1}",
                "kind": "line",
                "given": {"spans": spans, "span": SPAN, "loaded": loaded},
                "description": "Moment over the first inner bearing per P L, and reactions per P",
                "source": CLAPEYRON,
                "expected": [
                    one
                    for a in TENTHS
                    for one in (
                        expected(f"M {a}", -support_moments(spans, loaded, a)[1], 1e-9, "rounding"),
                        expected(f"R0 {a}", reactions(spans, loaded, a)[0], 1e-8, "rounding"),
                        expected(f"R1 {a}", reactions(spans, loaded, a)[1], 1e-8, "rounding"),
                    )
                ],
            }


def published():
    moments = [0.0405, 0.0740, 0.0938, 0.0926, 0.0636]
    shears = [0.7928, 0.5927, 0.4062, 0.2407, 0.1031]
    source = {
        "work": "Karnovsky and Lebed, Advanced Methods of Structural Analysis",
        "place": "Table A.13",
        "confidence": "published",
    }
    sixths = [k / 6 for k in range(1, 6)]
    return {
        "id": "two-spans-sixths",
        "kind": "line",
        "given": {"spans": 2, "span": SPAN, "loaded": 0},
        "description": "Two equal spans, load at sixths of the first",
        "source": source,
        "expected": [
            one
            for a, m, v in zip(sixths, moments, shears)
            for one in (
                expected(f"M {a}", m, 1.1e-4, "published to four places, the last of which is off by one in the table"),
                expected(f"R0 {a}", v, 1.1e-4, "published to four places, the last of which is off by one in the table"),
            )
        ],
    }


def published_second_span():
    return {
        "id": "two-spans-load-in-second-at-a-third",
        "kind": "line",
        "given": {"spans": 2, "span": SPAN, "loaded": 1},
        "description": "Two equal spans, load at a third of the second",
        "source": {
            "work": "Karnovsky and Lebed, Advanced Methods of Structural Analysis",
            "place": "Table A.13, load at section 8",
            "confidence": "published",
        },
        "expected": [
            expected(f"R0 {1 / 3}", -0.0926, 1.1e-4, "published to four places, the last of which is off by one in the table"),
            expected(f"R1 {1 / 3}", 0.8519, 1.1e-4, "published to four places, the last of which is off by one in the table"),
        ],
    }


def moving():
    for spans in range(2, 6):
        at = peak(lambda x: sagging(spans, x), 0.2, 0.7)
        hog = peak(lambda a: -support_moments(spans, 0, a)[1], 0.2, 0.9)
        yield {
            "id": f"moving-force-{spans}-spans",
            "kind": "moving",
            "given": {"spans": spans, "span": SPAN},
            "description": "One force anywhere: greatest moments per P L, and where",
            "source": CLAPEYRON,
            "expected": [
                expected("sagging", sagging(spans, at), 1e-7, "flat maximum"),
                expected("sagging at", at, 1e-3, "a flat maximum is met in value, not in place"),
                expected(
                    "hogging", -support_moments(spans, 0, hog)[1], 1e-7, "flat maximum"
                ),
                expected("load at", hog, 1e-3, "a flat maximum is met in value, not in place"),
                expected("end reaction", 1.0, 2e-9, "load stands 1e-6 mm beside the bearing"),
            ],
        }


cases = list(hogging_lines()) + [published(), published_second_span()] + list(moving())
text = {
    "about": "Influence lines and moving-load maxima of continuous beams of equal spans, per P and L.",
    "cases": cases,
}
path = pathlib.Path(__file__).with_name("influence.json")
path.write_text(json.dumps(text, indent=1, ensure_ascii=False) + "\n", encoding="utf-8")
