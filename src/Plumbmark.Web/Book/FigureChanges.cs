using Microsoft.AspNetCore.Http;
using Plumbmark.Inspection.Bench;
using Plumbmark.Inspection.Book;
using Plumbmark.Inspection.Journal;
using Plumbmark.Web.Server;
using static Plumbmark.Inspection.Language.Texts;

namespace Plumbmark.Web.Book;

/// <summary>A figure is doubted, corrected, believed again, or measured on a car.</summary>
internal static class FigureChanges
{
    public static IResult Judge(CarRequest request)
    {
        if (FigureView.Of(request) is not { } view)
        {
            return BookRoom.NoPage();
        }

        var faults = new FieldFaults();
        var status = Status(request, view, faults);
        return faults.Any || status is null
            ? Show.Again<FigurePage>(FigureView.Of(request, faults)!)
            : request.Keep(BookAddresses.Page(view.Car.Id, view.Page.Id), new Act.FigureJudged(view.Page.Id, view.Figure.Id, status));
    }

    public static IResult Measure(CarRequest request)
    {
        if (FigureView.Of(request) is not { } view)
        {
            return BookRoom.NoPage();
        }

        var faults = new FieldFaults();
        var car = request.RequiredText("car", Say("book.figure.the-car-it-was"), faults);
        var value = Value(request, "measured", view, faults);
        var note = request.OptionalText("note", faults);
        return faults.Any || value is null
            ? Show.Again<FigurePage>(FigureView.Of(request, faults)!)
            : request.Keep(
                BookAddresses.Figure(view.Car.Id, view.Page.Id, view.Figure.Id),
                new Act.FigureMeasured(view.Page.Id, view.Figure.Id, new CarEvidence(car, value, note))
            );
    }

    private static FigureStatus? Status(CarRequest request, FigureView view, FieldFaults faults)
    {
        var judgement = request.Field("judgement");
        if (judgement == "printed")
        {
            return FigureStatus.AsPrinted;
        }

        var reason = request.RequiredText("reason", Say("book.figure.a-reason"), faults, most: 300);
        var evidence = request.OptionalText("evidence", faults, most: 300);
        switch (judgement)
        {
            case "doubted":
                return new FigureStatus.Doubted(reason, evidence);
            case "corrected":
                return Value(request, "value", view, faults) is { } value ? new FigureStatus.Corrected(value, reason, evidence) : null;
            default:
                faults.Add("judgement", Say("book.figure.choose-what-the-figure"));
                return null;
        }
    }

    private static Amount? Value(CarRequest request, string field, FigureView view, FieldFaults faults)
    {
        var value = AmountText.Read(request.Field(field), view.Page.Units, out var refusal);
        var needed = view.Figure.Value?.Quantity;
        if (value is null)
        {
            faults.Add(field, refusal ?? Say("book.figure.a-value-is-needed"));
        }
        else if (needed is not null && value.Quantity != needed)
        {
            faults.Add(field, Say("book.figure.this-is-not-of"));
        }

        return value;
    }
}
