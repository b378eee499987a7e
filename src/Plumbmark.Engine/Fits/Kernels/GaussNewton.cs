namespace Plumbmark.Engine.Fits.Kernels;

/// <summary>Smallest sum of squared orthogonal distances by damped Gauss-Newton steps.</summary>
/// <remarks>
/// Levenberg's damping (Quarterly of Applied Mathematics 2, 1944): minimise |J d + f|² + λ|d|², by Householder on the stacked matrix. Assumes
/// coordinates scaled to about 1, so that one λ suits every unknown. Finds the minimum nearest the start.
/// </remarks>
internal static class GaussNewton
{
    // In scaled coordinates; on a part of 1 m this is a thousandth of a nanometre.
    private const double StepTolerance = 1e-12;
    private const int MostSteps = 100;
    private const double FirstDamping = 1e-6;

    // Near the minimum the sum is flat and two sums differ by roundings only; a step that promises less than this share is taken unproved.
    private const double FlatShare = 1e-12;

    public static (TState State, double[,]? Cofactor, bool Settled, int Steps) Minimise<TState>(FitModel<TState> model, TState start)
    {
        var (m, p) = (model.Rows, model.Unknowns);
        var (f, jacobian) = (new double[m], new double[m * p]);
        var (trial, trialJacobian) = (new double[m], new double[m * p]);
        var step = new double[p];
        var state = start;
        model.Linearise(state, f, jacobian);
        var (sum, damping, steps) = (Squares(f), FirstDamping, 0);
        for (; steps < MostSteps; steps++)
        {
            if (!Step(f, jacobian, m, p, damping, step))
            {
                return (state, null, false, steps);
            }

            var size = Math.Sqrt(Squares(step));
            var next = model.Move(state, step);
            model.Linearise(next, trial, trialJacobian);
            var nextSum = Squares(trial);
            if (nextSum <= sum || Promised(f, jacobian, step, sum) <= FlatShare * sum)
            {
                (state, sum, damping) = (next, nextSum, damping / 10);
                (f, trial, jacobian, trialJacobian) = (trial, f, trialJacobian, jacobian);
            }
            else if (size > StepTolerance)
            {
                damping *= 10;
            }

            if (size <= StepTolerance)
            {
                return (state, CofactorOf(jacobian, m, p), true, steps + 1);
            }
        }

        return (state, null, false, steps);
    }

    private static bool Step(double[] f, double[] jacobian, int m, int p, double damping, Span<double> step)
    {
        var a = new double[(m + p) * p];
        var b = new double[m + p];
        jacobian.CopyTo(a, 0);
        for (var i = 0; i < m; i++)
        {
            b[i] = -f[i];
        }

        for (var k = 0; k < p; k++)
        {
            a[((m + k) * p) + k] = Math.Sqrt(damping);
        }

        return SmallLeastSquares.Solve(a, b, m + p, p, step);
    }

    // |f|² - |f + J d|².
    private static double Promised(double[] f, double[] jacobian, double[] step, double sum)
    {
        var linear = 0.0;
        for (var i = 0; i < f.Length; i++)
        {
            var value = f[i];
            for (var k = 0; k < step.Length; k++)
            {
                value += jacobian[(i * step.Length) + k] * step[k];
            }

            linear += value * value;
        }

        return sum - linear;
    }

    private static double[,]? CofactorOf(double[] jacobian, int m, int p)
    {
        var (a, b) = ((double[])jacobian.Clone(), new double[m]);
        return m >= p && SmallLeastSquares.Solve(a, b, m, p, stackalloc double[p]) ? SmallLeastSquares.Cofactor(a, p) : null;
    }

    private static double Squares(ReadOnlySpan<double> values)
    {
        var sum = 0.0;
        foreach (var v in values)
        {
            sum += v * v;
        }

        return sum;
    }
}
