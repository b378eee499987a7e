namespace Plumbmark.Testing.Simulation;

/// <summary>How a simulated person measures a frame.</summary>
public sealed record SurveyStyle
{
    /// <summary>Drops of each point.</summary>
    public int Drops { get; init; } = 2;

    /// <summary>Standard deviation of one drop, each axis, millimetres.</summary>
    public double DropSigma { get; init; } = 0.5;

    /// <summary>Standard deviation of one end of the tape, millimetres.</summary>
    public double EndSigma { get; init; } = 0.5;

    /// <summary>Division of the tape, millimetres.</summary>
    public double Division { get; init; } = 0.5;

    /// <summary>Relative scale error of the tape.</summary>
    public double Scale { get; init; }

    /// <summary>Standard deviation of a height, millimetres.</summary>
    public double LevelSigma { get; init; } = 0.5;

    /// <summary>Whether heights are taken.</summary>
    public bool Heights { get; init; } = true;

    /// <summary>How many stations apart two points may be for a length between them.</summary>
    public int Reach { get; init; } = 2;

    /// <summary>Whether the book's figures are in the file.</summary>
    public bool Book { get; init; }

    /// <summary>Limit for everything, millimetres; null for none.</summary>
    public double? Limit { get; init; } = 3.175;
}
