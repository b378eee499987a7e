using Plumbmark.Inspection.Bench;

namespace Plumbmark.Inspection.Book;

/// <summary>The tolerance printed beside a figure; either side may be missing, which is not zero.</summary>
/// <param name="Plus">How much more is allowed.</param>
/// <param name="Minus">How much less is allowed, without its sign.</param>
public sealed record PrintedTolerance(Amount? Plus, Amount? Minus)
{
    /// <summary>Whether both sides are the same.</summary>
    public bool IsEven => Plus is not null && Plus == Minus;

    /// <summary>Such as <c>±1/16</c>, <c>+0 -1/2 deg</c>.</summary>
    public override string ToString() =>
        IsEven
            ? $"±{AmountText.Write(Plus!)}"
            : string.Join(
                " ",
                new[] { Plus is null ? null : $"+{AmountText.Write(Plus)}", Minus is null ? null : $"-{AmountText.Write(Minus)}" }.Where(
                    t => t is not null
                )
            );
}
