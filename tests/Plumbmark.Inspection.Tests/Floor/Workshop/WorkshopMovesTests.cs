using Plumbmark.Engine.Lengths;
using Plumbmark.Inspection.Car;

namespace Plumbmark.Inspection.Floor.Workshop;

public sealed class WorkshopMovesTests
{
    private const double Inch = 0.0254;
    private const double Tiny = 1e-12; // metres: rounding

    // A at the front (66, ±11), B behind it (50, ±14); A.R stands 0.30 in inwards (to the left) and 0.20 in low. Axes after ISO 8855.
    private static readonly CarFile s_car = new(
        LengthUnit.Inch,
        new CarIdentity("Invented"),
        [],
        new Frame([.. new[] { "A.L", "A.R", "B.L", "B.R" }.Select(id => new FramePoint(id, id[..2] + (id[2] == 'L' ? "R" : "L")))]),
        [new Reading.Plan("r1", "B.L", "A.R", Length.FromInches(29))]
    );

    private static PointEstimate At(string id, double x, double y, double z, Deviation? deviation) =>
        new(id, x * Inch, y * Inch, z * Inch, 0.001 * Inch, 0.001 * Inch, 0.001 * Inch, 0, deviation);

    private static FloorAnswer Answer(Deviation? right, IReadOnlyList<DamageEstimate>? damage = null, Verdict verdict = Verdict.Out) =>
        new(
            new OverallAnswer(verdict, "", [], []),
            [
                At(
                    "A.L",
                    66,
                    11,
                    13,
                    right is { Against: DeviationFrom.Symmetry } d ? new Deviation(0, d.DyMetres, -d.DzMetres, d.Against) : null
                ),
                At("A.R", 66, -10.7, 12.8, right),
                At("B.L", 50, 14, 13, null),
                At("B.R", 50, -14, 13, null),
            ],
            new AdjustmentSummary(3, 1, 0.5),
            [],
            [],
            [new PairEstimate("A.L", "A.R", 0.15 * Inch, 0, 21.7 * Inch, 0.2 * Inch, 0.02 * Inch, 0.02 * Inch, 0.02 * Inch, 0.02 * Inch)],
            [],
            damage ?? [],
            [
                new Check(
                    "side-shift:A",
                    "sideShift",
                    0.15 * Inch,
                    0.02 * Inch,
                    0.1 * Inch,
                    LimitSource.Practice,
                    0.01,
                    verdict,
                    ["A.L", "A.R"],
                    false
                ),
            ],
            [],
            []
        );

    private static readonly Deviation s_half = new(0, 0.15 * Inch, -0.1 * Inch, DeviationFrom.Symmetry);
    private static readonly DamageEstimate s_bent = new("point", 0.36 * Inch, 0.02 * Inch, "A.R", 20, "A.R is bent.");

    [Fact]
    public void Moves_OnePointNamedAsBent_MovesItAloneToTheMirrorOfItsPartner()
    {
        var move = Assert.Single(WorkshopMoves.Of(s_car, Answer(s_half, [s_bent])));
        Assert.Equal("A.R", move.Point);
        Assert.False(move.IsOneOfAPair);
        Assert.Equal([MoveDirection.Right, MoveDirection.Up], move.Parts.Select(p => p.Direction));
        Assert.Equal(0.3 * Inch, move.Parts[0].AmountMetres, Tiny);
        Assert.Equal(0.2 * Inch, move.Parts[1].AmountMetres, Tiny);
    }

    [Fact]
    public void Moves_OnlyTheDifferenceKnown_MovesBothHalfAndSaysSo()
    {
        var moves = WorkshopMoves.Of(s_car, Answer(s_half));
        Assert.Equal(["A.L", "A.R"], moves.Select(m => m.Point));
        Assert.All(moves, m => Assert.True(m.IsOneOfAPair));
        Assert.All(moves, m => Assert.Equal(0.15 * Inch, m.Parts.Single(p => p.Direction == MoveDirection.Right).AmountMetres, Tiny));
        Assert.Equal(MoveDirection.Down, moves[0].Parts[1].Direction);
        Assert.Equal(MoveDirection.Up, moves[1].Parts[1].Direction);
    }

    [Fact]
    public void Moves_BookKnowsThePlace_MovesAgainstTheDeviation()
    {
        var byBook = new Deviation(0.25 * Inch, null, null, DeviationFrom.Nominal);
        var move = WorkshopMoves.Of(s_car, Answer(byBook)).Single(m => m.Point == "A.R");
        Assert.Equal(DeviationFrom.Nominal, move.Against);
        Assert.Equal(MoveDirection.Rearward, Assert.Single(move.Parts).Direction);
    }

    [Fact]
    public void Guides_NowAndWanted_AreDistancesFromPointsThatStay()
    {
        var move = Assert.Single(WorkshopMoves.Of(s_car, Answer(s_half, [s_bent])));
        // Measured together with A.R, so it comes first: B.L (50, 14) to A.R (66, -10.7), wanted (66, -11). Own computation by Pythagoras.
        var first = move.Guides[0];
        Assert.Equal(("B.L", GuideKind.Plan), (first.From, first.Kind));
        Assert.Equal(Math.Sqrt((16 * 16) + (24.7 * 24.7)) * Inch, first.NowMetres, Tiny);
        Assert.Equal(Math.Sqrt((16 * 16) + (25.0 * 25.0)) * Inch, first.WantedMetres, Tiny);
        Assert.DoesNotContain(move.Guides, g => g.From == "A.R");
        var rise = Assert.Single(move.Guides, g => g.Kind == GuideKind.Rise);
        Assert.Equal(0, rise.WantedMetres, Tiny);
        Assert.Equal(-0.2 * Inch, rise.NowMetres, Tiny);
    }

    [Theory]
    [InlineData(Verdict.True)]
    [InlineData(Verdict.CannotTellYet)]
    public void Moves_NothingSurelyOut_AsksForNothing(Verdict verdict) =>
        Assert.Empty(WorkshopMoves.Of(s_car, Answer(s_half, verdict: verdict)));
}
