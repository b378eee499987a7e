using Plumbmark.Inspection.Floor;

namespace Plumbmark.Web.Floor;

/// <summary>The numbers behind the answer, for whoever wants to check them: the same that <c>plumbmark check --json</c> prints.</summary>
/// <param name="Points">Where each point is.</param>
/// <param name="Readings">How each reading fits.</param>
/// <param name="Checks">What each check says.</param>
public sealed record WorkingView(
    IReadOnlyList<WorkingView.Row> Points,
    IReadOnlyList<WorkingView.Row> Readings,
    IReadOnlyList<WorkingView.Row> Checks
)
{
    private const double MillimetresPerMetre = 1000;

    /// <summary>A row: its name, then its numbers as text; a dash where there is none.</summary>
    public sealed record Row(string Name, IReadOnlyList<string> Numbers);

    /// <summary>The working of an answer.</summary>
    public static WorkingView Of(FloorAnswer answer) =>
        new(
            [
                .. answer.Points.Select(p => new Row(
                    p.Id,
                    [.. new[] { p.XMetres, p.UxMetres, p.YMetres, p.UyMetres, p.ZMetres, p.UzMetres }.Select(Millimetres)]
                )),
            ],
            [
                .. answer.Readings.Select(r => new Row(
                    r.Id,
                    [
                        Millimetres(r.ResidualMetres),
                        Number(r.Standardised, "0.0"),
                        Number(r.RedundancyNumber, "0.00"),
                        Millimetres(r.MinimalDetectableMetres),
                    ]
                )),
            ],
            [
                .. answer.Checks.Select(c => new Row(
                    c.Id,
                    [Millimetres(c.ValueMetres), Millimetres(c.UMetres), Millimetres(c.LimitMetres), Number(c.ProbabilityWithin, "0.000")]
                )),
            ]
        );

    private static string Millimetres(double? metres) => Number(metres * MillimetresPerMetre, "0.0");

    private static string Number(double? number, string format) => number?.ToString(format) ?? "–";
}
