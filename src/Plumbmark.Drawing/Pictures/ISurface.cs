namespace Plumbmark.Drawing.Pictures;

/// <summary>What a picture can be drawn on: SVG text or the canvas of a page.</summary>
internal interface ISurface
{
    void Path(IReadOnlyList<Spot> spots, bool isClosed, Ink ink);

    void Ellipse(Spot centre, double along, double across, double turnDegrees, Ink ink);

    void Words(Spot at, string text, Lettering lettering, Anchor anchor);

    void Group(string name, string? title, IReadOnlyList<Shape> shapes);

    void Link(string href, string key, string title, IReadOnlyList<Shape> shapes);
}
