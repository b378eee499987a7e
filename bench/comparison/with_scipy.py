"""The same problems as a person would write them with SciPy: least_squares with the derivatives given, the covariance from the inverse of JᵀJ, redundancy
numbers, and the odds of every slip in closed form, whole arrays at a time. usage: with_scipy.py FOLDER REPEATS"""
import os, sys, time
import numpy as np
from scipy.optimize import least_squares, linprog
from scipy.sparse import csr_matrix
from scipy.sparse.linalg import spsolve

folder, repeats = sys.argv[1], int(sys.argv[2])
times = open(os.path.join(folder, "times.scipy.txt"), "w")


def timed(name, repeats, run):
    run()
    taken = []
    for _ in range(repeats):
        start = time.perf_counter()
        result = run()
        taken.append((time.perf_counter() - start) * 1000)
    times.write(" ".join([name] + [repr(t) for t in taken]) + "\n")
    return result


def network(name, sparse):
    points = np.loadtxt(os.path.join(folder, name + ".points.txt"))
    readings = np.loadtxt(os.path.join(folder, name + ".readings.txt"))
    free = np.column_stack([points[:, 0] == 0, points[:, 0] == 0, np.ones(len(points), bool)])
    number = np.where(free.ravel(), np.cumsum(free.ravel()) - 1, -1).reshape(-1, 3)
    kind, a, b = readings[:, 0].astype(int), readings[:, 1].astype(int), readings[:, 2].astype(int)
    value, sigma = readings[:, 3], readings[:, 4]
    direct, height = np.flatnonzero(kind == 0), np.flatnonzero(kind == 1)

    def places(x):
        p = points[:, 1:].copy()
        p[free] = x
        return p

    def residuals(x):
        p, r = places(x), np.empty(len(value))
        r[direct] = np.linalg.norm(p[b[direct]] - p[a[direct]], axis=1)
        r[height] = p[a[height], 2]
        return (r - value) / sigma

    def jacobian(x):
        p = places(x)
        d = p[b[direct]] - p[a[direct]]
        n = d / np.linalg.norm(d, axis=1)[:, None] / sigma[direct][:, None]
        rows = np.concatenate([np.repeat(direct, 3), np.repeat(direct, 3), height])
        columns = np.concatenate([number[a[direct]].ravel(), number[b[direct]].ravel(), number[a[height], 2]])
        entries = np.concatenate([-n.ravel(), n.ravel(), 1 / sigma[height]])
        known = columns >= 0
        j = csr_matrix((entries[known], (rows[known], columns[known])), shape=(len(value), free.sum()))
        return j if sparse else j.toarray()

    slips = np.loadtxt(os.path.join(folder, name + ".slips.txt"), ndmin=2) if not sparse else None

    def alternatives(x, j, covariance, r):
        """Log odds of every slip of every reading against "nothing is wrong", in closed form from the one fit; the variance factor is integrated out (8 degrees of freedom)."""
        i, what, meant, prior = slips[:, 0].astype(int), slips[:, 1], slips[:, 2], slips[:, 3]
        m = residuals(x)
        total, freedom = m @ m, len(m) - len(x)
        rest = total - m[i] ** 2 / r[i]
        d, s = -m[i] * sigma[i] / r[i], sigma[i] ** 2 / r[i]

        def evidence(d, s_meant, t):
            under = rest + d * d / (s_meant + t)
            return 0.5 * np.log(s / (s_meant + t)) + 0.5 * (8 + freedom) * np.log((8 + total) / (8 + under))

        # Plan instead of direct: another model, so that its prediction and the variance of that come from its own derivatives.
        plan = what == 2
        ip, p = i[plan], places(x)
        u = p[b[ip], :2] - p[a[ip], :2]
        n = np.linalg.norm(u, axis=1)
        h = np.zeros((len(ip), len(x)))
        for axis in range(2):
            for end, sign in ((a, -1.0), (b, 1.0)):
                column = number[end[ip], axis]
                h[column >= 0, column[column >= 0]] = (sign * u[:, axis] / n)[column >= 0]
        hq = h @ covariance
        along = np.einsum("ij,ij->i", hq, j[ip])
        difference, meant_s = d - (value[i] - meant), s.copy()
        difference[plan] = value[ip] - n - along * m[ip] / r[ip]
        meant_s[plan] = np.einsum("ij,ij->i", hq, h) + sigma[ip] ** 2 + along ** 2 / r[ip]
        free = np.mean([np.exp(evidence(d, s, size ** 2)) for size in (0.005, 0.02, 0.08, 0.3)], axis=0)
        return prior + np.where(what == 0, np.log(free), evidence(difference, meant_s, 0))

    def solve():
        start = points[:, 1:][free]
        if sparse:
            # least_squares with a sparse Jacobian takes minutes to eight digits (lsmr); by hand it is a few lines.
            x = start
            for _ in range(50):
                j = jacobian(x)
                step = spsolve((j.T @ j).tocsc(), -(j.T @ residuals(x)))
                x = x + step
                if np.abs(step).max() < 1e-12:
                    break
        else:
            x = least_squares(residuals, start, jacobian, method="lm", xtol=1e-15, ftol=1e-15, gtol=1e-15).x
        j = jacobian(x)
        normal = (j.T @ j).toarray() if sparse else j.T @ j
        covariance = np.linalg.inv(normal)
        leverage = np.asarray((j.multiply(j @ covariance)).sum(axis=1)).ravel() if sparse else np.einsum("ij,ij->i", j @ covariance, j)
        r = 1 - leverage
        return np.concatenate([x, np.sqrt(np.diag(covariance)), r] + ([] if sparse else [alternatives(x, j, covariance, r)]))

    return solve


def plane():
    p = np.loadtxt(os.path.join(folder, "plate.points.txt"))

    def solve():
        # Turned until the plane found lies level, because the distance along z is the distance to the plane only then.
        q = p - p.mean(axis=0)
        for _ in range(20):
            ones = np.ones(len(q))
            up = np.column_stack([q[:, 0], q[:, 1], ones, -ones])
            down = np.column_stack([-q[:, 0], -q[:, 1], -ones, -ones])
            lp = linprog([0, 0, 0, 1], np.vstack([up, down]), np.concatenate([q[:, 2], -q[:, 2]]),
                         bounds=[(None, None)] * 3 + [(0, None)], method="highs", options={"primal_feasibility_tolerance": 1e-10, "dual_feasibility_tolerance": 1e-10})
            n = np.array([-lp.x[0], -lp.x[1], 1.0])
            n /= np.linalg.norm(n)
            if np.hypot(n[0], n[1]) < 1e-12:
                break
            u = np.cross([0.0, 1.0, 0.0], n)
            u /= np.linalg.norm(u)
            q = q @ np.column_stack([u, np.cross(n, u), n])
        return np.array([q[:, 2] @ np.zeros(len(q)) + 2 * lp.x[3]])

    return solve


for name, sparse, times_of in (("bay", False, repeats), ("frame", False, repeats), ("hall", True, 1)):
    np.savetxt(os.path.join(folder, name + ".scipy.txt"), timed(name, times_of, network(name, sparse)), fmt="%.17g")
np.savetxt(os.path.join(folder, "plate.scipy.txt"), timed("plate", repeats, plane()), fmt="%.17g")
