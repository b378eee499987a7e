using Plumbmark.Drawing.Pictures;

namespace Plumbmark.Drawing.Floor;

/// <summary>Where metres of a view come to lie in the picture, and how much deviations are exaggerated there.</summary>
internal sealed record Figure(Spot Origin, double UnitsPerMetre, int Times)
{
    /// <summary>The part of the picture that the frame may take.</summary>
    /// <param name="Corner">Its top left corner.</param>
    /// <param name="Width">Its width.</param>
    /// <param name="Tallest">The most height that may be used.</param>
    /// <param name="Reach">Room kept above and below for deviations and marks.</param>
    /// <param name="ShowsCentre">Whether the view shows the centre line, across = 0.</param>
    public sealed record Box(Spot Corner, double Width, double Tallest, double Reach = 26, bool ShowsCentre = true)
    {
        /// <summary>Room kept on the left and the right.</summary>
        public const double Beside = 26;
    }

    /// <summary>Fits the points into a box and chooses the exaggeration.</summary>
    /// <param name="seen">The points; at least one.</param>
    /// <param name="box">Where they may be drawn.</param>
    /// <param name="limitMetres">A limit that should be seen beside the deviations; 0 for none.</param>
    /// <returns>The figure and the height that it takes.</returns>
    public static (Figure Figure, double Height) Fit(IReadOnlyList<Seen> seen, Box box, double limitMetres)
    {
        var centreMetres = box.ShowsCentre ? 0 : seen[0].AcrossMetres;
        var (left, right) = (Math.Min(seen.Min(s => s.AcrossMetres), centreMetres), Math.Max(seen.Max(s => s.AcrossMetres), centreMetres));
        var (bottom, top) = (seen.Min(s => s.UpMetres), seen.Max(s => s.UpMetres));
        const double LeastSpanMetres = 0.3; // a lone point still gets a scale
        var (spanAcross, spanUp) = (Math.Max(right - left, LeastSpanMetres), Math.Max(top - bottom, LeastSpanMetres / 4));
        var scale = Math.Min((box.Width - (2 * Box.Beside)) / spanAcross, (box.Tallest - (2 * box.Reach)) / spanUp);
        var height = ((top - bottom) * scale) + (2 * box.Reach);
        var middle = box.Corner.X + (box.Width / 2);
        var origin = new Spot(middle - ((left + right) / 2 * scale), box.Corner.Y + box.Reach + (top * scale));
        var largest = Math.Max(limitMetres, seen.Max(s => s.DeviationMetres));
        if (largest == 0)
        {
            // Nothing deviates and nothing limits: let the rings be seen instead.
            largest = seen.Where(s => s.Spread is not null).Select(s => s.Spread!.Value.Ellipse95().AlongMetres).DefaultIfEmpty(0).Max();
        }

        return (new Figure(origin, scale, Exaggeration.Of(largest, scale, box.Reach - 4)), height);
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
