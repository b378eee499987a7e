using CsCheck;
using MathNet.Numerics.LinearAlgebra;
using Plumbmark.Engine.LeastSquares;

namespace Plumbmark.Engine.Tests.LeastSquares;

/// <summary>The dense kernels against Math.NET Numerics 5.0 and against their own definitions.</summary>
public class KernelLaws
{
    private static readonly Gen<(int Rows, int Columns, double[] Matrix, Random Random)> s_tall = Gen.Select(
            Gen.Int[0, 1_000_000],
            Gen.Int[1, 12],
            Gen.Int[0, 20]
        )
        .Select(
            (seed, columns, more) =>
            {
                var random = new Random(seed);
                var rows = columns + more;
                return (rows, columns, Enumerable.Range(0, rows * columns).Select(_ => random.NextDouble() - 0.5).ToArray(), random);
            }
        );

    private static Matrix<double> ToMatrix(int rows, int columns, double[] rowMajor) =>
        Matrix<double>.Build.DenseOfRowMajor(rows, columns, rowMajor);

    private static void Same(IEnumerable<double> expected, IEnumerable<double> actual, double within)
    {
        var size = expected.Select(Math.Abs).DefaultIfEmpty(1).Max();
        Assert.All(
            expected.Zip(actual),
            p => Assert.True(Math.Abs(p.First - p.Second) <= within * Math.Max(1, size), $"{p.First:R} {p.Second:R}")
        );
    }

    [Fact]
    public void Qr_SolvesAsTheReferenceLibraryDoes() =>
        s_tall.Sample(
            c =>
            {
                var b = Enumerable.Range(0, c.Rows).Select(_ => c.Random.NextDouble()).ToArray();
                var a = ToMatrix(c.Rows, c.Columns, c.Matrix);
                var svd = a.Svd();
                if (svd.ConditionNumber > 1e6)
                {
                    return;
                }

                var qr = PivotedQr.Of(c.Matrix, c.Rows, c.Columns);
                Assert.Equal(c.Columns, qr.Rank);
                Same(svd.Solve(Vector<double>.Build.Dense(b)), qr.Solve(b), 1e-9 * svd.ConditionNumber);
                Same(
                    a.TransposeThisAndMultiply(a).Inverse().Enumerate(),
                    ToMatrix(c.Columns, c.Columns, qr.InverseGram()).Enumerate(),
                    1e-9 * svd.ConditionNumber
                );
            },
            iter: 200
        );

    [Fact]
    public void Qr_FindsTheRankAndNullSpaceOfADependentMatrix() =>
        Gen.Select(Gen.Int[0, 1_000_000], Gen.Int[2, 10], Gen.Int[1, 9])
            .Sample(
                (seed, columns, wanted) =>
                {
                    var random = new Random(seed);
                    var rank = Math.Min(wanted, columns - 1);
                    var rows = columns + 5;
                    var left = Matrix<double>.Build.Dense(rows, rank, (_, _) => random.NextDouble() - 0.5);
                    var right = Matrix<double>.Build.Dense(rank, columns, (_, _) => random.NextDouble() - 0.5);
                    var product = left * right;
                    var qr = PivotedQr.Of(product.ToRowMajorArray(), rows, columns, 1e-12);
                    Assert.Equal(product.Rank(), qr.Rank);
                    var nullSpace = qr.NullSpace();
                    Assert.Equal(columns - qr.Rank, nullSpace.Length);
                    foreach (var (v, k) in nullSpace.Select((v, k) => (v, k)))
                    {
                        Assert.True((product * Vector<double>.Build.Dense(v)).L2Norm() < 1e-10);
                        for (var j = 0; j <= k; j++)
                        {
                            Assert.Equal(j == k ? 1 : 0, v.Zip(nullSpace[j], (x, y) => x * y).Sum(), 1e-12);
                        }
                    }
                },
                iter: 200
            );

    [Fact]
    public void Qr_RowsOfVeryDifferentWeight_KeepTheirDigits()
    {
        // Two unknowns, one reading of each a hundred million times as sure as the other; exact answer x = (1, 2).
        double[] a = [1e8, 1e8, 1, -1, 2, 1];
        double[] b = [3e8, -1, 4];
        Same([1, 2], PivotedQr.Of(a, 3, 2).Solve(b), 1e-12);
    }

    [Fact]
    public void Eigen_AgreesWithTheReferenceLibrary() =>
        s_tall.Sample(
            c =>
            {
                var n = c.Columns;
                var a = ToMatrix(n, n, c.Matrix[..(n * n)]);
                var symmetric = a + a.Transpose();
                var eigen = SymmetricEigen.Of(symmetric.ToRowMajorArray(), n);
                Same(symmetric.Evd(Symmetricity.Symmetric).EigenValues.Select(v => v.Real).OrderDescending(), eigen.Values, 1e-12);
                for (var k = 0; k < n; k++)
                {
                    var v = Vector<double>.Build.Dense(eigen.Vectors[k]);
                    Assert.True((symmetric * v - eigen.Values[k] * v).L2Norm() < 1e-12 * (1 + symmetric.FrobeniusNorm()));
                    Assert.Equal(1, v.L2Norm(), 1e-12);
                }
            },
            iter: 200
        );

    [Fact]
    public void EnvelopeCholesky_SolvesAndInvertsAsTheReferenceLibraryDoes() =>
        Gen.Select(Gen.Int[0, 1_000_000], Gen.Int[1, 30])
            .Sample(
                (seed, n) =>
                {
                    var random = new Random(seed);
                    var first = Enumerable.Range(0, n).Select(i => i - random.Next(Math.Min(i, 8) + 1)).ToArray();
                    var sparse = new EnvelopeCholesky(first);
                    var dense = Matrix<double>.Build.Dense(n, n);
                    for (var i = 0; i < n; i++)
                    {
                        for (var j = first[i]; j <= i; j++)
                        {
                            sparse[i, j] = i == j ? 10 + random.NextDouble() : random.NextDouble() - 0.5;
                            dense[i, j] = dense[j, i] = sparse[i, j];
                        }
                    }

                    Assert.True(sparse.TryFactor(1e-12));
                    var b = Enumerable.Range(0, n).Select(_ => random.NextDouble()).ToArray();
                    var expected = dense.Solve(Vector<double>.Build.Dense(b));
                    sparse.Solve(b);
                    Same(expected, b, 1e-12);
                    var inverse = dense.Inverse();
                    Same(inverse.ToRowMajorArray(), sparse.Inverse(), 1e-12);
                    var selected = sparse.SelectedInverse();
                    for (var i = 0; i < n; i++)
                    {
                        for (var j = first[i]; j <= i; j++)
                        {
                            Assert.Equal(inverse[i, j], selected[i, j], 1e-13);
                        }
                    }
                },
                iter: 200
            );

    [Fact]
    public void EnvelopeCholesky_RefusesASingularMatrix()
    {
        var singular = new EnvelopeCholesky([0, 0]);
        (singular[0, 0], singular[1, 0], singular[1, 1]) = (1, 1, 1);
        Assert.False(singular.TryFactor(1e-12));
    }

    [Fact]
    public void BandOrder_IsAPermutationAndShortensAScrambledPath()
    {
        var random = new Random(5);
        var names = Enumerable.Range(0, 50).OrderBy(_ => random.Next()).ToArray();
        var neighbours = Enumerable.Range(0, 50).Select(_ => new HashSet<int>()).ToArray();
        for (var i = 1; i < 50; i++)
        {
            neighbours[names[i]].Add(names[i - 1]);
            neighbours[names[i - 1]].Add(names[i]);
        }

        var order = BandOrder.Of(neighbours);
        Assert.Equal(Enumerable.Range(0, 50), order.Order());
        var place = order.Select((node, i) => (node, i)).ToDictionary(p => p.node, p => p.i);
        Assert.All(Enumerable.Range(0, 50), i => Assert.All(neighbours[i], j => Assert.Equal(1, Math.Abs(place[i] - place[j]))));
    }
}
