namespace Plumbmark.Inspection.Floor.Forms;

/// <summary>One way in which a frame may be damaged: a form at a place, and how the coordinates move for each unit of its amount.</summary>
/// <param name="Form">The form.</param>
/// <param name="From">The station or point where it begins or sits; null for the whole frame.</param>
/// <param name="Subject">The point's number for <see cref="DamageForm.Point"/>; -1 otherwise.</param>
/// <param name="Moves">For each amount the displacement of every coordinate per unit; a bent point has up to three amounts, all else one.</param>
/// <param name="OnlyPositive">Whether a negative amount has no meaning: nothing is mashed longer.</param>
internal sealed record DamageShape(DamageForm Form, string? From, int Subject, double[][] Moves, bool OnlyPositive = false)
{
    /// <summary>Whether both sides move alike: symmetry cannot see it, only the book can.</summary>
    public bool IsSymmetric { get; init; }

    /// <summary>Whether it moves the outermost station alone: then it is that pair's own matter, and naming the whole frame for it would be too much.</summary>
    public bool IsOneStation { get; init; }

    /// <summary>Whether it is an explanation other than damage.</summary>
    public bool IsLookAlike => Form is DamageForm.TapeScale or DamageForm.Lean;
}
