using Plumbmark.Engine.LeastSquares;

namespace Plumbmark.Engine.Adjustment;

/// <summary>The covariance of the unknowns (weights are 1/σ², so the cofactor matrix is the a-priori covariance), by unknown.</summary>
/// <remarks>Held unknowns have zero rows until <see cref="Constrain"/> moves the datum from them to all points.</remarks>
internal abstract class Cofactor
{
    public abstract int Count { get; }

    /// <summary>Covariance of two unknowns.</summary>
    public abstract double Of(int i, int j);

    /// <summary>Q v.</summary>
    public abstract double[] Times(ReadOnlySpan<double> v);

    /// <summary>The whole matrix, row-major; not to be changed.</summary>
    public abstract double[] Full();

    /// <summary>vᵀ Q v.</summary>
    public double Quadratic(ReadOnlySpan<double> v) => Dense.Dot(Times(v), v);

    /// <summary>Takes the cofactors of a factor with full rank.</summary>
    public static Cofactor Of(NetworkFactor factor) =>
        factor.Cholesky is { } cholesky && factor.Order.Position.Length > DenseCofactor.Limit
            ? new EnvelopeCofactor(factor.Order, cholesky)
            : new DenseCofactor(factor);

    /// <summary>
    /// S-transformation onto inner constraints: Q' = S Q Sᵀ, S = I − G Bᵀ, with G the free motions and B the same restricted to the datum
    /// points and orthonormal there. Source: Baarda, S-transformations and criterion matrices, 1973 (from memory).
    /// </summary>
    public abstract Cofactor Constrain(double[][] g, double[][] b);
}
