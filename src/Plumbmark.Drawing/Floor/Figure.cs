using Plumbmark.Drawing.Pictures;

namespace Plumbmark.Drawing.Floor;

/// <summary>Where metres of a view come to lie in the picture, and how much deviations are exaggerated there.</summary>
internal sealed record Figure(Spot Origin, double UnitsPerMetre, int Times)
{
    /// <summary>Room left around the frame for deviations and marks, in picture units.</summary>
    public const double Margin = 26;

    /// <summary>Fits the points into a box and chooses the exaggeration.</summary>
    /// <param name="seen">The points; at least one.</param>
    /// <param name="corner">Top left corner of the box.</param>
    /// <param name="width">Width of the box.</param>
    /// <param name="tallest">The most height that may be used.</param>
    /// <param name="limitMetres">A limit that should be seen beside the deviations; 0 for none.</param>
    /// <param name="showsCentre">Whether the view shows the centre line, across = 0.</param>
    /// <returns>The figure and the height that it takes.</returns>
    public static (Figure Figure, double Height) Fit(
        IReadOnlyList<Seen> seen,
        Spot corner,
        double width,
        double tallest,
        double limitMetres,
        bool showsCentre = true
    )
    {
        var centreMetres = showsCentre ? 0 : seen[0].AcrossMetres;
        var (left, right) = (Math.Min(seen.Min(s => s.AcrossMetres), centreMetres), Math.Max(seen.Max(s => s.AcrossMetres), centreMetres));
        var (bottom, top) = (seen.Min(s => s.UpMetres), seen.Max(s => s.UpMetres));
        const double LeastSpanMetres = 0.3; // a lone point still gets a scale
        var (spanAcross, spanUp) = (Math.Max(right - left, LeastSpanMetres), Math.Max(top - bottom, LeastSpanMetres / 4));
        var scale = Math.Min((width - (2 * Margin)) / spanAcross, (tallest - (2 * Margin)) / spanUp);
        var height = ((top - bottom) * scale) + (2 * Margin);
        var middle = corner.X + (width / 2);
        var origin = new Spot(middle - ((left + right) / 2 * scale), corner.Y + Margin + (top * scale));
        var largest = Math.Max(limitMetres, seen.Max(s => s.DeviationMetres));
        if (largest == 0)
        {
            // Nothing deviates and nothing limits: let the rings be seen instead.
            largest = seen.Where(s => s.Spread is not null).Select(s => s.Spread!.Value.Ellipse95().AlongMetres).DefaultIfEmpty(0).Max();
        }

        return (new Figure(origin, scale, Exaggeration.Of(largest, scale)), height);
    }

    /// <summary>A place of the view, in metres, in the picture.</summary>
    public Spot At(double acrossMetres, double upMetres) =>
        new(Origin.X + (acrossMetres * UnitsPerMetre), Origin.Y - (upMetres * UnitsPerMetre));

    /// <summary>Where the point should be.</summary>
    public Spot Should(Seen seen) => At(seen.AcrossMetres, seen.UpMetres);

    /// <summary>Where the point is, its deviation exaggerated.</summary>
    public Spot Drawn(Seen seen) =>
        At(seen.AcrossMetres + (Times * seen.DeviationAcrossMetres), seen.UpMetres + (Times * seen.DeviationUpMetres));
}
