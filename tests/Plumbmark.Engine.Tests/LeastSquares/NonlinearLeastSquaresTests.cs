using Plumbmark.Engine.LeastSquares;

namespace Plumbmark.Engine.Tests.LeastSquares;

/// <summary>The iteration on problems whose minimum is known.</summary>
public class NonlinearLeastSquaresTests
{
    private sealed class Problem(int unknowns, int equations, Func<double[], double[]> residuals, Func<double[], double[]> jacobian)
        : ILeastSquaresProblem
    {
        public int UnknownCount => unknowns;

        public int EquationCount => equations;

        public void Residuals(ReadOnlySpan<double> x, Span<double> r) => residuals(x.ToArray()).CopyTo(r);

        public void Jacobian(ReadOnlySpan<double> x, Span<double> j) => jacobian(x.ToArray()).CopyTo(j);
    }

    // Rosenbrock 1960 as a sum of squares; More, Garbow and Hillstrom, Testing unconstrained optimization software, 1981, problem 1 (from memory).
    [Fact]
    public void Rosenbrock_FromTheUsualStart_EndsAtOneOne()
    {
        var problem = new Problem(2, 2, x => [10 * (x[1] - x[0] * x[0]), 1 - x[0]], x => [-20 * x[0], 10, -1, 0]);
        var fit = NonlinearLeastSquares.Solve(problem, [-1.2, 1]);
        Assert.True(fit.Summary.IsSolutionUsable);
        Assert.Equal(1, fit.Unknowns[0], 1e-12);
        Assert.Equal(1, fit.Unknowns[1], 1e-12);
        Assert.NotEmpty(fit.Summary.Iterations);
    }

    // The same 1981, problem 13: Powell's singular function, whose Jacobian loses rank at the minimum (from memory).
    [Fact]
    public void PowellSingular_ReachesTheOriginThoughTheRankFails()
    {
        var (r5, r10) = (Math.Sqrt(5), Math.Sqrt(10));
        var problem = new Problem(
            4,
            4,
            x => [x[0] + 10 * x[1], r5 * (x[2] - x[3]), Math.Pow(x[1] - 2 * x[2], 2), r10 * Math.Pow(x[0] - x[3], 2)],
            x =>
                [
                    1,
                    10,
                    0,
                    0,
                    0,
                    0,
                    r5,
                    -r5,
                    0,
                    2 * (x[1] - 2 * x[2]),
                    -4 * (x[1] - 2 * x[2]),
                    0,
                    2 * r10 * (x[0] - x[3]),
                    0,
                    0,
                    -2 * r10 * (x[0] - x[3]),
                ]
        );
        var fit = NonlinearLeastSquares.Solve(problem, [3, -1, 0, 1]);
        Assert.All(fit.Unknowns, v => Assert.Equal(0, v, 1e-4));
        Assert.True(fit.SumOfSquares < 1e-16);
    }

    [Fact]
    public void AModelThatFailsOutsideItsRange_IsApproachedByShorterSteps()
    {
        // ln x has no value left of zero, where the first full step would land.
        var problem = new Problem(1, 1, x => [x[0] > 0 ? Math.Log(x[0]) - 1 : double.NaN], x => [1 / x[0]]);
        Assert.Equal(Math.E, NonlinearLeastSquares.Solve(problem, [50]).Unknowns[0], 1e-10);
    }

    [Fact]
    public void AStartOutsideTheModelsRange_IsSaid()
    {
        var problem = new Problem(1, 1, x => [double.NaN], x => [1]);
        var fit = NonlinearLeastSquares.Solve(problem, [1]);
        Assert.Equal(StopReason.StartNotFinite, fit.Summary.Reason);
        Assert.False(fit.Summary.IsSolutionUsable);
    }
}
