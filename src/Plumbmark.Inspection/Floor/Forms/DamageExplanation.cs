namespace Plumbmark.Inspection.Floor.Forms;

/// <summary>One form at one place with its fitted amount.</summary>
/// <param name="Shape">The form at the place believed most.</param>
/// <param name="From">Station, point or, when one of a pair is bent and nothing says which, the pair; null for the whole frame.</param>
/// <param name="IsPair">Whether it is one of a pair, and nothing says which.</param>
/// <param name="AmountMetres">The amount; for a tape's scale or a lean a share.</param>
/// <param name="UMetres">Its standard uncertainty, with that of where the damage begins.</param>
internal sealed record DamagePart(DamageShape Shape, string? From, bool IsPair, double AmountMetres, double UMetres)
{
    /// <summary>Of a point how far it moved forward, left and up, metres; of one of a pair as if that point alone had. Empty for any other form.</summary>
    public IReadOnlyList<double> MovedMetres { get; init; } = [];

    /// <summary>The names of the two points when it is one of a pair.</summary>
    public (string Left, string Right)? Pair { get; init; }

    /// <summary>Whether the point that moved lies on the car's left.</summary>
    public bool IsLeft { get; init; }

    /// <summary>The form.</summary>
    public DamageForm Form => Shape.Form;

    /// <summary>The point's number; -1 when it is not a point.</summary>
    public int Subject => Shape.Subject;
}

/// <summary>What may have happened to the frame: nothing, one form, or two together.</summary>
/// <param name="Parts">The forms; empty for nothing.</param>
/// <param name="Probability">Its share of belief among all explanations tried.</param>
internal sealed record DamageExplanation(IReadOnlyList<DamagePart> Parts, double Probability);
