namespace Plumbmark.Inspection.Book.Checks;

/// <summary>Figures that, each with its sign, must add up to nothing.</summary>
/// <param name="Terms">The figures and their signs, +1 or -1; a figure may come twice. The figure that closes the loop stands first.</param>
/// <param name="Axis">What the figures run along, for the sentence.</param>
internal sealed record Loop(IReadOnlyList<(PageFigure Figure, int Sign)> Terms, string Axis)
{
    // Sums of exact decimals in double arithmetic differ in the last bits; a micrometre is far below any printed digit.
    private const double ArithmeticMetres = 1e-6;

    public double MisclosureMetres { get; } = Terms.Sum(t => t.Sign * t.Figure.Metres);

    /// <summary>What rounding alone can leave: each figure at its worst.</summary>
    public double AllowedMetres { get; } = Terms.Sum(t => t.Figure.RoundingMetres) + ArithmeticMetres;

    public bool Closes => Math.Abs(MisclosureMetres) <= AllowedMetres;

    public IEnumerable<string> Ids => Terms.Select(t => t.Figure.Id);

    /// <summary>Whether the loop closes once a figure has another value.</summary>
    public bool ClosesWith(string id, double metres)
    {
        var shift = Terms.Where(t => t.Figure.Id == id).Sum(t => t.Sign * (metres - t.Figure.Metres));
        return Math.Abs(MisclosureMetres + shift) <= AllowedMetres;
    }
}
