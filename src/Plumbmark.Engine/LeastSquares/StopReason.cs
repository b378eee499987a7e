namespace Plumbmark.Engine.LeastSquares;

/// <summary>Why an iteration stopped.</summary>
public enum StopReason
{
    /// <summary>The residuals stand at right angles to every derivative: a stationary point of the sum of squares.</summary>
    GradientVanished,

    /// <summary>The next step is too small to change the unknowns' digits.</summary>
    StepVanished,

    /// <summary>The residuals themselves are zero within rounding.</summary>
    ResidualsVanished,

    /// <summary>No step, however short, makes the sum of squares smaller; rounding is all that is left.</summary>
    NoFurtherDescent,

    /// <summary>
    /// The model is flat here: steps change next to nothing, although the derivatives promise more further off. Not a solution; another
    /// start or a larger first damping may find one.
    /// </summary>
    Plateau,

    /// <summary>The limit of iterations was reached first: not a solution.</summary>
    IterationLimit,

    /// <summary>The model gives no finite residuals at the start: not a solution.</summary>
    StartNotFinite,
}
