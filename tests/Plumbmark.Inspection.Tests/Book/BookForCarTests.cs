using Plumbmark.Engine.Lengths;
using Plumbmark.Inspection.Book;
using Plumbmark.Inspection.Car;
using Plumbmark.Inspection.Journal;
using static Plumbmark.Inspection.Tests.Book.BookSamples;

namespace Plumbmark.Inspection.Tests.Book;

public class BookForCarTests
{
    [Fact]
    public void TwoPagesThatDisagree_AreBothTold_AndNeitherIsUsed()
    {
        var one = Page(Between("a", "A.L", "B.R", "33 1/8")) with { Id = "one" };
        var two = Page(Between("k", "B.R", "A.L", "33.53")) with { Id = "two" };
        var answer = Assert.Single(BookForCar.Of([one, two], null, []).Subjects);
        Assert.Equal(["one", "two"], Assert.IsType<FigureChoice.Disagree>(answer.Choice).Figures.Select(f => f.Page.Id));
        Assert.Empty(BookForCar.Of([one, two], null, []).Frame);
    }

    [Fact]
    public void PagesThatAgreeWithinTheirRounding_AreOneFigure_TheOneWithASource()
    {
        var bare = Page(Between("a", "A", "B", "33 17/32")) with { Id = "bare" };
        var sourced = Page(Between("k", "A", "B", "852 mm")) with { Id = "sourced", Source = new BookSource("Dipper book") };
        var choice = Assert.IsType<FigureChoice.Applies>(Assert.Single(BookForCar.Of([bare, sourced], null, []).Subjects).Choice);
        Assert.Equal("sourced", choice.Figure.Page.Id);
        Assert.Equal(BookSource.NoSource, Assert.Single(choice.Agreeing).Source.ToString());
    }

    [Fact]
    public void FigureLeftEmptyOrDoubted_IsMissing_AndForOthersOnly_CannotApply()
    {
        var page = Page(
            Between("a", "A", "B", null),
            Between("b", "A", "C", "30") with
            {
                Status = new FigureStatus.Doubted("three cars measure 8 mm more"),
            },
            Between("c", "A", "D", "31") with
            {
                AppliesTo = Serials("QD 1200", null),
            }
        );
        var subjects = BookForCar.Of([page], "QD 1047", []).Subjects;
        Assert.IsType<FigureChoice.Missing>(subjects[0].Choice);
        Assert.IsType<FigureChoice.Missing>(subjects[1].Choice);
        Assert.IsType<FigureChoice.ForOtherCars>(subjects[2].Choice);
    }

    [Fact]
    public void DoubtAndCorrection_ThroughTheJournal_KeepWhatIsPrinted()
    {
        var page = Page(Between("a", "A", "B", "33 1/8"));
        Act[] acts =
        [
            new Act.BookPagePut(page),
            new Act.FigureMeasured("p", "a", new CarEvidence("car 1", Amount("33 17/32"))),
            new Act.FigureJudged("p", "a", new FigureStatus.Doubted("cars measure more")),
            new Act.FigureJudged("p", "a", new FigureStatus.Corrected(Amount("33 17/32"), "measured", "car 1")),
            new Act.FigureJudged("p", "gone", new FigureStatus.Doubted("not there")),
        ];
        var figure = Fold.Of(acts.Select(a => new JournalEntry(Guid.NewGuid(), DateTimeOffset.UnixEpoch, null, a)))
            .Book.Pages[0]
            .Dimensions[0];
        Assert.Equal((Amount("33 1/8"), Amount("33 17/32")), (figure.Value, figure.Used));
        Assert.Equal("Corrected to 33 17/32: measured (car 1).", figure.Status.Words);
        Assert.Single(figure.Evidence);
    }

    [Fact]
    public void Evidence_ACarCountsOnce_ByItsLatestFigure()
    {
        var figure = Between("a", "A", "B", "33") with
        {
            Evidence =
            [
                new("car 1", Amount("40")),
                new("Car 1 ", Amount("33.5")),
                new("car 2", Amount("33.4")),
                new("car 3", Amount("33.6")),
            ],
        };
        var mean = RobustMean.Of(figure)!;
        Assert.Equal(3, mean.Count);
        Assert.Equal(33.5 * 0.0254, mean.Mean, 1e-9);
        Assert.NotNull(mean.Spread);
        Assert.Null(RobustMean.Of(figure with { Evidence = figure.Evidence.Take(3).ToList() })!.Spread);
        Assert.Null(RobustMean.Of(figure with { Evidence = [] }));
    }

    [Fact]
    public void BookOfACarFile_IsForTheCarOfThatFile()
    {
        var car = CarFile.Named("Shed find", LengthUnit.Inch) with
        {
            Car = new CarIdentity("Shed find", "QD 1047"),
            Book = new BookSection([Page(Between("a", "A", "B", "10") with { AppliesTo = Serials("QD 1000", "QD 1100") })], []),
        };
        Assert.IsType<FigureChoice.Applies>(Assert.Single(BookForCar.Of(car).Subjects).Choice);
    }
}
