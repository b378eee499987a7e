namespace Plumbmark.Engine.Fits.Kernels;

/// <summary>A shape as the two searches see it: residuals, their derivatives by a small move from where the shape stands, and the move itself.</summary>
/// <typeparam name="TState">The shape in the model's own scaled coordinates.</typeparam>
/// <remarks>Moves are local (a tilt is measured from the present direction), so no direction of space is special.</remarks>
internal abstract class FitModel<TState>
{
    /// <summary>How many numbers a move has.</summary>
    public abstract int Unknowns { get; }

    /// <summary>How many residuals there are: one or two per point.</summary>
    public abstract int Rows { get; }

    /// <summary>Fills residuals and, row by row, their derivatives by the numbers of a move.</summary>
    public abstract void Linearise(TState state, Span<double> residuals, Span<double> jacobian);

    /// <summary>The shape after a move.</summary>
    public abstract TState Move(TState state, ReadOnlySpan<double> step);
}
