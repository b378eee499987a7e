using Plumbmark.Engine.LeastSquares;

namespace Plumbmark.Engine.Tests.Adjustment;

/// <summary>
/// NIST/ITL Statistical Reference Datasets, non-linear regression: all 27 sets from both starts, scored in agreeing digits of the certified
/// values (which have eleven), with a floor for each set, half a digit below what is reached.
/// </summary>
public class NistPublishedNonlinear
{
    // Digits of the estimates, of their standard deviations, and of the residual standard deviation.
    // Lanczos1: the data are exact to their 14 digits, so that the residuals (1e-13) are the rounding of the model itself.
    // Lanczos2 and 3: the sum of squares is flat to the sixteenth digit over the last digits of its six exponentials.
    [Theory]
    [InlineData("Bennett5", 1, 10, 10, 10)]
    [InlineData("Bennett5", 2, 10, 10, 10)]
    [InlineData("BoxBOD", 2, 10, 10, 10)]
    [InlineData("Chwirut1", 1, 10, 10, 10)]
    [InlineData("Chwirut1", 2, 10, 10, 10)]
    [InlineData("Chwirut2", 1, 10, 10, 10)]
    [InlineData("Chwirut2", 2, 10, 10, 10)]
    [InlineData("DanWood", 1, 10, 10, 10)]
    [InlineData("DanWood", 2, 10, 10, 10)]
    [InlineData("ENSO", 1, 10, 10, 10)]
    [InlineData("ENSO", 2, 10, 10, 10)]
    [InlineData("Eckerle4", 1, 10, 10, 10)]
    [InlineData("Eckerle4", 2, 10, 10, 10)]
    [InlineData("Gauss1", 1, 10, 10, 10)]
    [InlineData("Gauss1", 2, 10, 10, 10)]
    [InlineData("Gauss2", 1, 9, 10, 10)]
    [InlineData("Gauss2", 2, 9, 10, 10)]
    [InlineData("Gauss3", 1, 10, 10, 10)]
    [InlineData("Gauss3", 2, 10, 10, 10)]
    [InlineData("Hahn1", 1, 10, 10, 10)]
    [InlineData("Hahn1", 2, 10, 10, 10)]
    [InlineData("Kirby2", 1, 10, 10, 10)]
    [InlineData("Kirby2", 2, 10, 10, 10)]
    [InlineData("Lanczos1", 1, 10, 2, 2)]
    [InlineData("Lanczos1", 2, 10, 2, 2)]
    [InlineData("Lanczos2", 1, 7, 7, 10)]
    [InlineData("Lanczos2", 2, 7, 7, 10)]
    [InlineData("Lanczos3", 1, 10, 8, 10)]
    [InlineData("Lanczos3", 2, 8, 8, 10)]
    [InlineData("MGH09", 1, 10, 10, 10)]
    [InlineData("MGH09", 2, 10, 10, 10)]
    [InlineData("MGH10", 2, 10, 10, 10)]
    [InlineData("MGH17", 1, 10, 10, 10)]
    [InlineData("MGH17", 2, 10, 10, 10)]
    [InlineData("Misra1a", 1, 10, 10, 10)]
    [InlineData("Misra1a", 2, 10, 10, 10)]
    [InlineData("Misra1b", 1, 10, 10, 10)]
    [InlineData("Misra1b", 2, 10, 10, 10)]
    [InlineData("Misra1c", 1, 10, 10, 10)]
    [InlineData("Misra1c", 2, 10, 10, 10)]
    [InlineData("Misra1d", 1, 10, 10, 10)]
    [InlineData("Misra1d", 2, 10, 10, 10)]
    [InlineData("Nelson", 1, 10, 10, 10)]
    [InlineData("Nelson", 2, 10, 10, 10)]
    [InlineData("Rat42", 1, 10, 10, 10)]
    [InlineData("Rat42", 2, 10, 10, 10)]
    [InlineData("Rat43", 1, 10, 10, 10)]
    [InlineData("Rat43", 2, 10, 10, 10)]
    [InlineData("Roszman1", 1, 10, 10, 10)]
    [InlineData("Roszman1", 2, 10, 10, 10)]
    [InlineData("Thurber", 1, 10, 10, 10)]
    [InlineData("Thurber", 2, 10, 10, 10)]
    public void Solve_AgreesWithTheCertifiedValues(string name, int start, int estimates, int deviations, int residual) =>
        Check(name, start, SolveOptions.Default, estimates, deviations, residual);

    [Fact]
    public void Solve_BoxBodFromItsFirstStart_TellsThatItStandsOnAPlateau()
    {
        // From b = (1, 1) the first steps reach b2 = 84, where exp(−b2 x) is nothing and only b1 still counts: a sum of squares of 9771.5
        // instead of 1168, flat in b2. It must not pass for a solution; with short first steps the valley is found.
        var fit = Fit(NistDataSet.Read("BoxBOD"), 1, SolveOptions.Default);
        Assert.Equal(StopReason.Plateau, fit.Summary.Reason);
        Assert.False(fit.Summary.IsSolutionUsable);
        Check("BoxBOD", 1, new SolveOptions { InitialDamping = 100 }, estimates: 10, deviations: 10, residual: 10);
    }

    [Fact]
    public void Solve_Mgh10FromItsFirstStart_TellsThatPatienceEnded()
    {
        // From b = (2, 400 000, 25 000) the way leads along a bent valley in which b1 falls by 350 and b2 by 65: about 7 700 steps.
        var fit = Fit(NistDataSet.Read("MGH10"), 1, SolveOptions.Default);
        Assert.Equal(StopReason.IterationLimit, fit.Summary.Reason);
        Assert.False(fit.Summary.IsSolutionUsable);
        Check("MGH10", 1, new SolveOptions { MaximumIterations = 20_000 }, estimates: 7, deviations: 7, residual: 10);
    }

    [Fact]
    public void Derivatives_AgreeWithCentralDifferences()
    {
        foreach (var name in NistModels.ByName.Keys)
        {
            var set = NistDataSet.Read(name);
            var problem = new NistProblem(set);
            var x = set.Parameters.Select(p => p.Estimate).ToArray();
            var (m, n) = (problem.EquationCount, problem.UnknownCount);
            var jacobian = new double[m * n];
            problem.Jacobian(x, jacobian);
            for (var j = 0; j < n; j++)
            {
                var difference = CentralDifference(problem, x, j);
                var largest = Enumerable.Range(0, m).Max(i => Math.Abs(jacobian[i * n + j]));
                // The cube root of the rounding, 6e-6 of x, leaves about 1e-9 of the largest derivative; the models here bend more.
                Assert.All(
                    difference.Select((d, i) => (d, i)),
                    e => Assert.True(Math.Abs(e.d - jacobian[e.i * n + j]) <= 1e-6 * largest, $"{name} b{j + 1} row {e.i}")
                );
            }
        }
    }

    private static double[] CentralDifference(NistProblem problem, double[] x, int j)
    {
        var (low, high) = (new double[problem.EquationCount], new double[problem.EquationCount]);
        var (left, right) = ((double[])x.Clone(), (double[])x.Clone());
        var h = 6e-6 * Math.Abs(x[j]);
        left[j] -= h;
        right[j] += h;
        problem.Residuals(left, low);
        problem.Residuals(right, high);
        return [.. high.Zip(low, (a, b) => (a - b) / (right[j] - left[j]))];
    }

    private static LeastSquaresFit Fit(NistDataSet set, int start, SolveOptions options) =>
        NonlinearLeastSquares.Solve(new NistProblem(set), [.. set.Parameters.Select(p => start == 1 ? p.Start1 : p.Start2)], options);

    private static void Check(string name, int start, SolveOptions options, int estimates, int deviations, int residual)
    {
        var set = NistDataSet.Read(name);
        var fit = Fit(set, start, options);
        Assert.True(fit.Summary.IsSolutionUsable, $"{fit.Summary.Reason}");
        var n = set.Parameters.Length;
        Assert.Equal(n, fit.Factor.Rank);
        var s = fit.ResidualDeviation!.Value;
        var gram = fit.Factor.InverseGram();
        var deviation = Enumerable.Range(0, n).Select(j => s * Math.Sqrt(gram[j * n + j]));
        AtLeast(estimates, NistDataSet.AgreeingDigits(set.Parameters.Select(p => p.Estimate), fit.Unknowns), "estimates");
        AtLeast(deviations, NistDataSet.AgreeingDigits(set.Parameters.Select(p => p.Deviation), deviation), "standard deviations");
        AtLeast(residual, NistDataSet.AgreeingDigits([set.ResidualDeviation], [s]), "residual standard deviation");

        void AtLeast(int floor, double digits, string what) =>
            Assert.True(digits >= floor, $"{name}, start {start}, {what}: {digits:F1} digits");
    }
}
