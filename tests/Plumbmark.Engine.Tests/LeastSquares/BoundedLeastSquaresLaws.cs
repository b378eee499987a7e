using CsCheck;
using Plumbmark.Engine.LeastSquares;

namespace Plumbmark.Engine.Tests.LeastSquares;

public class BoundedLeastSquaresLaws
{
    private static readonly Gen<(double[] A, double[] B, double[] Low, double[] High)> s_problem = Gen.Select(
        Gen.Double[-2, 2].Array[6 * 4],
        Gen.Double[-3, 3].Array[6],
        Gen.Double[-1, 0].Array[4],
        Gen.Double[0.01, 1].Array[4]
    );

    [Fact]
    public void Solve_MeetsTheConditionsOfAMinimum() =>
        // Karush, Kuhn and Tucker: inside its bounds the gradient is zero; at a bound it points out of the box. For a convex problem that is the minimum.
        s_problem.Sample(
            p =>
            {
                var x = BoundedLeastSquares.Solve(p.A, 6, 4, p.B, p.Low, p.High);
                for (var j = 0; j < 4; j++)
                {
                    var gradient = Enumerable
                        .Range(0, 6)
                        .Sum(i => p.A[(i * 4) + j] * (Enumerable.Range(0, 4).Sum(k => p.A[(i * 4) + k] * x[k]) - p.B[i]));
                    Assert.InRange(x[j], p.Low[j], p.High[j]);
                    Assert.True(x[j] > p.Low[j] || gradient >= -1e-9);
                    Assert.True(x[j] < p.High[j] || gradient <= 1e-9);
                    Assert.True(x[j] <= p.Low[j] || x[j] >= p.High[j] || Math.Abs(gradient) < 1e-9);
                }
            },
            iter: 300
        );

    [Fact]
    public void Solve_WithoutUnknowns_IsEmpty() => Assert.Empty(BoundedLeastSquares.Solve([], 2, 0, [1, 2], [], []));

    [Fact]
    public void Solve_BoundsThatMeet_GiveThatValue() => Assert.Equal(0.25, BoundedLeastSquares.Solve([1], 1, 1, [9], [0.25], [0.25])[0]);

    [Fact]
    public void Solve_TwoUnknownsThatDoTheSame_StillFinds() =>
        Assert.Equal(1, BoundedLeastSquares.Solve([1, 1], 1, 2, [1], [-2, -2], [2, 2]).Sum(), 1e-12);
}
