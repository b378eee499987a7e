using Plumbmark.Engine.Lengths;
using Plumbmark.Inspection.Bench;
using Plumbmark.Inspection.Book;
using Plumbmark.Inspection.Car;
using Plumbmark.Inspection.Floor.Levelling;
using Plumbmark.Inspection.Press;
using Plumbmark.Inspection.Road;

namespace Plumbmark.Inspection.Journal;

/// <summary>One thing a person did to a car's record. The record is nothing but its acts in order; none is ever changed or removed.</summary>
/// <remarks>Closed: a new kind of act is added here, in <see cref="ActJson"/> and in <see cref="Fold"/>, and nowhere else.</remarks>
public abstract record Act
{
    private Act() { }

    /// <summary>The car was named or described, or its unit chosen.</summary>
    /// <param name="Car">Which car it is from now on.</param>
    /// <param name="Units">Unit of a bare number from now on; readings already written keep theirs.</param>
    public sealed record CarDescribed(CarIdentity Car, LengthUnit Units) : Act;

    /// <summary>A tool was described, or described anew.</summary>
    /// <param name="Tool">The tool; one of the same id is replaced.</param>
    public sealed record ToolDescribed(Tool Tool) : Act;

    /// <summary>A tool was put away.</summary>
    /// <param name="Id">Its name.</param>
    public sealed record ToolRemoved(string Id) : Act;

    /// <summary>A point was drawn, or drawn anew.</summary>
    /// <param name="Point">The point; one of the same id is replaced in its place.</param>
    public sealed record PointDrawn(FramePoint Point) : Act;

    /// <summary>A point was rubbed out. Its readings stay in the journal, and come back if the point is drawn again.</summary>
    /// <param name="Id">Its name.</param>
    public sealed record PointRemoved(string Id) : Act;

    /// <summary>Limits were chosen.</summary>
    /// <param name="Limits">The limits; null takes them away.</param>
    public sealed record LimitsChosen(Limits? Limits) : Act;

    /// <summary>The level was read at the stands, the floor or the plumb line, or read anew.</summary>
    /// <param name="Level">How the frame stands; null takes it away.</param>
    public sealed record LevelRead(LevelSection? Level) : Act;

    /// <summary>A reading was taken.</summary>
    /// <param name="Reading">The reading; one whose id is known already is not taken again.</param>
    public sealed record ReadingTaken(Reading Reading) : Act;

    /// <summary>A reading was taken back. It stays on record and no longer counts.</summary>
    /// <param name="Id">The reading.</param>
    /// <param name="Reason">Why.</param>
    public sealed record ReadingWithdrawn(string Id, string Reason) : Act;

    /// <summary>A photo of a point or a reading was taken.</summary>
    /// <param name="Photo">The photo and what it shows; the same one again is not added.</param>
    public sealed record PhotoTaken(PhotoOf Photo) : Act;

    /// <summary>A photo of a point or a reading was put away. The picture stays beside the journal.</summary>
    /// <param name="Photo">The photo and what it showed.</param>
    public sealed record PhotoPutAway(PhotoOf Photo) : Act;

    /// <summary>The suspension was described, or described anew: its drawing, the book's angles, the adjusters.</summary>
    /// <param name="Drawing">The section; what was measured (parts off their drawing, wheel readings) has acts of its own and is not taken from here.</param>
    public sealed record RoadDescribed(RoadSection Drawing) : Act;

    /// <summary>A part or place of the suspension was found off its drawing.</summary>
    /// <param name="Part">What was found; one whose id is known already is not taken again.</param>
    public sealed record PartFound(PartDeviation Part) : Act;

    /// <summary>Something found on a part was taken back. It stays on record and no longer counts.</summary>
    /// <param name="Id">The finding.</param>
    /// <param name="Reason">Why.</param>
    public sealed record PartTakenBack(string Id, string Reason) : Act;

    /// <summary>A reading of the wheel check was taken.</summary>
    /// <param name="Reading">The reading; one whose id is known already is not taken again.</param>
    public sealed record WheelRead(WheelReading Reading) : Act;

    /// <summary>A reading of the wheel check was taken back. It stays on record and no longer counts.</summary>
    /// <param name="Id">The reading.</param>
    /// <param name="Reason">Why.</param>
    public sealed record WheelReadingWithdrawn(string Id, string Reason) : Act;

    /// <summary>A press job was described, or described anew; its bites and crack tests stay.</summary>
    /// <param name="Job">The job without bites and crack tests: those are acts of their own.</param>
    public sealed record PressJobDescribed(PressJob Job) : Act;

    /// <summary>A press job was put away.</summary>
    /// <param name="Id">Its name.</param>
    public sealed record PressJobRemoved(string Id) : Act;

    /// <summary>A bite was made and read.</summary>
    /// <param name="Job">The job.</param>
    /// <param name="Bite">The bite; one whose id is known already is not made again.</param>
    public sealed record BiteMade(string Job, BiteRecord Bite) : Act;

    /// <summary>A bite was taken back. It stays on record and no longer counts.</summary>
    /// <param name="Job">The job.</param>
    /// <param name="Id">The bite.</param>
    /// <param name="Reason">Why.</param>
    public sealed record BiteWithdrawn(string Job, string Id, string Reason) : Act;

    /// <summary>A part was tested for cracks.</summary>
    /// <param name="Job">The job.</param>
    /// <param name="Test">The test.</param>
    public sealed record CrackTested(string Job, Press.CrackTest Test) : Act;

    /// <summary>A loose part was laid on the bench, or its card written anew.</summary>
    /// <param name="Part">The part; its measures have acts of their own and are not taken from here.</param>
    public sealed record BenchPartLaid(Part Part) : Act;

    /// <summary>A part was put away from the bench. Its measures stay in the journal, and come back if it is laid there again.</summary>
    /// <param name="Id">Its name.</param>
    public sealed record BenchPartPutAway(string Id) : Act;

    /// <summary>Something was measured on a part.</summary>
    /// <param name="Part">The part.</param>
    /// <param name="Measure">What was measured; one whose id the part knows already is not taken again.</param>
    public sealed record BenchMeasured(string Part, Measure Measure) : Act;

    /// <summary>A measure on a part was taken back. It stays on record and no longer counts.</summary>
    /// <param name="Part">The part.</param>
    /// <param name="Id">The measure.</param>
    /// <param name="Reason">Why.</param>
    public sealed record BenchMeasureWithdrawn(string Part, string Id, string Reason) : Act;

    /// <summary>A variant of a part was described, or described anew.</summary>
    /// <param name="Variant">The variant; one of the same id is replaced.</param>
    public sealed record VariantDescribed(PartVariant Variant) : Act;

    /// <summary>A variant was struck out.</summary>
    /// <param name="Id">Its name.</param>
    public sealed record VariantRemoved(string Id) : Act;

    /// <summary>A book page was put with the car, or put anew.</summary>
    /// <param name="Page">The page; one of the same id is replaced as a whole.</param>
    public sealed record BookPagePut(BookPage Page) : Act;

    /// <summary>A book page was taken away.</summary>
    /// <param name="Id">Its name.</param>
    public sealed record BookPageRemoved(string Id) : Act;

    /// <summary>How far a figure of the book is believed was settled: doubted, corrected, or taken as printed again.</summary>
    /// <param name="Page">The page.</param>
    /// <param name="Dimension">The figure.</param>
    /// <param name="Status">Its status from now on; what is printed stays on record.</param>
    public sealed record FigureJudged(string Page, string Dimension, FigureStatus Status) : Act;

    /// <summary>A figure of the book was measured on a car.</summary>
    /// <param name="Page">The page.</param>
    /// <param name="Dimension">The figure.</param>
    /// <param name="Evidence">What was measured; added to what is there.</param>
    public sealed record FigureMeasured(string Page, string Dimension, CarEvidence Evidence) : Act;

    /// <summary>What the car is fitted with was told, where the book makes a difference by it.</summary>
    /// <param name="Attributes">All of it; what was told before is replaced.</param>
    public sealed record CarFitted(IReadOnlyList<CarAttribute> Attributes) : Act;

    /// <summary>An earlier act was undone: the record reads as if it had not happened, and both stay in the journal.</summary>
    /// <param name="Entry">The journal entry undone.</param>
    public sealed record Undone(Guid Entry) : Act;
}
