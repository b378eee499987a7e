using CsCheck;
using Plumbmark.Engine.Adjustment;

namespace Plumbmark.Engine.Tests.Adjustment;

/// <summary>Derivatives against differences, for every kind of equation.</summary>
public class RowModelLaws
{
    [Fact]
    public void EveryKindOfRowOccurs()
    {
        var compiled = NetworkCompiler.Compile(EveryKind.Of(new Random(1)));
        Assert.Equal(Enum.GetValues<RowKind>().Except([RowKind.CoordinateY]).Order(), compiled.Rows.Select(r => r.Kind).Distinct().Order());
    }

    [Fact]
    public void Derivatives_AreTheLimitOfCentralDifferences() =>
        Gen.Int.Sample(
            seed =>
            {
                var random = new Random(seed);
                var compiled = NetworkCompiler.Compile(EveryKind.Of(random));
                var x = Plumbmark.Engine.Adjustment.Starts.SketchStart.Of(compiled);
                for (var u = 0; u < x.Length; u++)
                {
                    x[u] += 0.05 * (random.NextDouble() - 0.5);
                }

                compiled.RefreshFloor(x);
                for (var row = 0; row < compiled.RowCount; row++)
                {
                    CheckRow(compiled, row, x);
                }
            },
            iter: 40
        );

    private static void CheckRow(CompiledNetwork compiled, int row, double[] x)
    {
        const double Step = 1e-5;
        var slots = new double[CompiledNetwork.Stride];
        RowModel.Derivatives(compiled, compiled.Rows[row], compiled.FloorMetres[row], x, slots);
        var analytic = new double[x.Length];
        var columns = compiled.ColumnsOf(row);
        for (var s = 0; s < slots.Length; s++)
        {
            if (columns[s] >= 0)
            {
                analytic[columns[s]] += slots[s];
            }
        }

        for (var u = 0; u < x.Length; u++)
        {
            var numeric = (At(compiled, row, x, u, Step) - At(compiled, row, x, u, -Step)) / (2 * Step);

            // Curvature: third derivatives of a length of a metre, times step².
            Assert.True(
                Math.Abs(numeric - analytic[u]) < 1e-7,
                $"{compiled.Rows[row].Kind} by unknown {u}: {analytic[u]} against {numeric}"
            );
        }
    }

    private static double At(CompiledNetwork compiled, int row, double[] x, int u, double step)
    {
        var moved = (double[])x.Clone();
        moved[u] += step;
        return RowModel.Misclosure(compiled, compiled.Rows[row], compiled.FloorMetres[row], moved);
    }
}
