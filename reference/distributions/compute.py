"""Values of the distributions to 25 digits, computed with mpmath (BSD licence) at 60 digits.

Run: python3 compute.py > distributions.csv
Only textbook definitions are used here (incomplete gamma and beta functions by hypergeometric series),
so that the table does not share a method with the program it checks.
"""
from mpmath import mp, mpf, erfc, sqrt, gammainc, gamma, betainc, beta, exp, nsum, inf, nstr, pi, factorial, power

mp.dps = 60


def out(name, x, a, b, value):
    print(f"{name},{nstr(mpf(x), 20)},{a},{b},{nstr(value, 25)}")


def normal(z):
    return erfc(-mpf(z) / sqrt(2)) / 2


def t_upper(t, nu):
    t, nu = mpf(t), mpf(nu)
    if t < 0:
        return 1 - t_upper(-t, nu)
    return betainc(nu / 2, mpf(1) / 2, 0, nu / (nu + t * t), regularized=True) / 2


def chi_lower(x, nu):
    return gammainc(mpf(nu) / 2, 0, mpf(x) / 2, regularized=True)


def chi_upper(x, nu):
    return gammainc(mpf(nu) / 2, mpf(x) / 2, inf, regularized=True)


def f_upper(x, d1, d2):
    x, d1, d2 = mpf(x), mpf(d1), mpf(d2)
    return betainc(d2 / 2, d1 / 2, 0, d2 / (d2 + d1 * x), regularized=True)


def nc_upper(x, nu, lam):
    h = mpf(lam) / 2
    total, j = mpf(0), 0
    while True:
        term = exp(-h) * power(h, j) / factorial(j) * chi_upper(x, nu + 2 * j)
        total += term
        if j > h and term < total * mpf(10) ** -35:
            return total
        j += 1


print("function,x,a,b,value")
for z in ["-37", "-20", "-8", "-5", "-3", "-1.959963984540054", "-1.5", "-1", "-0.5", "-0.001", "0", "0.3", "1", "2.5", "6"]:
    out("normal", z, "", "", normal(z))
for t, nus in {"0.001": [1, 5], "0.5": [1, 2.5, 30], "2": [1, 2, 3, 10, 100, 10000, 1000000], "-1.5": [4, 25.6], "6": [1, 5, 50, 1000], "30": [2, 8, 40], "1000": [1, 3]}.items():
    for nu in nus:
        out("t-upper", t, nu, "", t_upper(t, nu))
for x, nus in {"0.0001": [1, 3, 10], "0.5": [1, 2, 5, 20], "3.84": [1, 2, 3.5, 7], "20": [1, 8, 20, 60], "100": [5, 80, 100, 120, 300], "1050": [1000], "100500": [100000]}.items():
    for nu in nus:
        out("chi-lower", x, nu, "", chi_lower(x, nu))
        out("chi-upper", x, nu, "", chi_upper(x, nu))
for x, ds in {"0.01": [(1, 1), (5, 3)], "1": [(1, 10), (30, 30), (3, 1000)], "4": [(1, 1), (2, 7), (10, 20), (100, 50)], "30": [(3, 5), (4, 60)]}.items():
    for d1, d2 in ds:
        out("f-upper", x, d1, d2, f_upper(x, d1, d2))
for x, nu, lam in [("10.827566170662733", 1, "17.0746"), ("3.84", 1, "7.85"), ("20", 8, "0.5"), ("40", 12, "30"), ("100", 50, "200"), ("5", 3, "60")]:
    out("nc-upper", x, nu, lam, nc_upper(x, nu, lam))
