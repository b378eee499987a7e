namespace Plumbmark.Drawing.Pictures;

/// <summary>What a picture is made of. Closed: every shape tells the surface what it is, and a surface that misses one does not compile.</summary>
public abstract record Shape
{
    private Shape() { }

    internal abstract void DrawOn(ISurface surface);

    /// <summary>A straight line.</summary>
    public sealed record Line(Spot From, Spot To, Ink Ink) : Shape
    {
        internal override void DrawOn(ISurface surface) => surface.Path([From, To], isClosed: false, Ink);
    }

    /// <summary>Straight lines from spot to spot, closed to an area or open.</summary>
    public sealed record Path(IReadOnlyList<Spot> Spots, bool IsClosed, Ink Ink) : Shape
    {
        internal override void DrawOn(ISurface surface) => surface.Path(Spots, IsClosed, Ink);
    }

    /// <summary>A circle.</summary>
    public sealed record Circle(Spot Centre, double Radius, Ink Ink) : Shape
    {
        internal override void DrawOn(ISurface surface) => surface.Ellipse(Centre, Radius, Radius, 0, Ink);
    }

    /// <summary>An ellipse.</summary>
    /// <param name="Centre">Its middle.</param>
    /// <param name="RadiusAlong">Half its length.</param>
    /// <param name="RadiusAcross">Half its breadth.</param>
    /// <param name="TurnDegrees">How far its length is turned from the right, clockwise as seen.</param>
    /// <param name="Ink">How it looks.</param>
    public sealed record Ellipse(Spot Centre, double RadiusAlong, double RadiusAcross, double TurnDegrees, Ink Ink) : Shape
    {
        internal override void DrawOn(ISurface surface) => surface.Ellipse(Centre, RadiusAlong, RadiusAcross, TurnDegrees, Ink);
    }

    /// <summary>A line of words.</summary>
    public sealed record Words(Spot At, string Text, Lettering Lettering, Anchor Anchor = Anchor.Start) : Shape
    {
        internal override void DrawOn(ISurface surface) => surface.Words(At, Text, Lettering, Anchor);
    }

    /// <summary>Shapes that belong together, with a title that a pointer or a screen reader tells.</summary>
    public sealed record Group(string Name, string? Title, IReadOnlyList<Shape> Shapes) : Shape
    {
        internal override void DrawOn(ISurface surface) => surface.Group(Name, Title, Shapes);
    }

    /// <summary>Shapes that lead somewhere when tapped.</summary>
    /// <param name="Href">Where to.</param>
    /// <param name="Key">What it stands for, such as a point's name; a script may read it.</param>
    /// <param name="Title">What a screen reader tells.</param>
    /// <param name="Shapes">What is seen and tapped.</param>
    public sealed record Link(string Href, string Key, string Title, IReadOnlyList<Shape> Shapes) : Shape
    {
        internal override void DrawOn(ISurface surface) => surface.Link(Href, Key, Title, Shapes);
    }
}
