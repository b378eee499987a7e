namespace Plumbmark.Drawing.Floor;

/// <summary>How many times too large deviations and rings are drawn: one round number for the whole drawing, written on it.</summary>
internal static class Exaggeration
{
    private static readonly int[] s_rounds = [1, 2, 5, 10, 20, 50, 100, 200];

    /// <summary>Large enough to see at arm's length, small enough to stay beside its point.</summary>
    public const double UsualLargest = 22;

    /// <param name="largestMetres">What must not be drawn larger than it can be: the largest deviation, and the limit.</param>
    /// <param name="unitsPerMetre">Scale of the drawing.</param>
    /// <param name="largestUnits">How large it may be drawn, in picture units.</param>
    public static int Of(double largestMetres, double unitsPerMetre, double largestUnits = UsualLargest)
    {
        var fits = Array.FindLast(s_rounds, n => n * largestMetres * unitsPerMetre <= largestUnits);
        return fits == 0 ? 1 : fits;
    }
}
