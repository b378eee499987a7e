namespace Plumbmark.Inspection.Floor.Workshop;

/// <summary>From where a point is to where it belongs, in metres with standard uncertainties; null where nothing tells.</summary>
internal sealed record Wish((double? Amount, double? U) X, (double? Amount, double? U) Y, (double? Amount, double? U) Z)
{
    /// <summary>The wish without the directions that are not among the parts of a move.</summary>
    public Wish Only(IReadOnlyList<MovePart> parts)
    {
        bool Moves(MoveDirection one, MoveDirection other) => parts.Any(p => p.Direction == one || p.Direction == other);
        return new Wish(
            Moves(MoveDirection.Forward, MoveDirection.Rearward) ? X : default,
            Moves(MoveDirection.Left, MoveDirection.Right) ? Y : default,
            Moves(MoveDirection.Up, MoveDirection.Down) ? Z : default
        );
    }
}
