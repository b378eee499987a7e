using System.Text.Json;
using Plumbmark.Engine.Lengths;
using Plumbmark.Inspection.Book;
using Plumbmark.Inspection.Book.Json;
using Plumbmark.Inspection.Car.Json;

namespace Plumbmark.Inspection.Journal;

/// <summary>The book's acts as the text that is kept.</summary>
internal static class BookActJson
{
    public static void WriteBody(Utf8JsonWriter json, Act act, LengthUnit units)
    {
        switch (act)
        {
            case Act.BookPagePut a:
                json.WritePropertyName("page");
                PageJson.Write(json, a.Page);
                break;
            case Act.BookPageRemoved a:
                json.WriteString("id", a.Id);
                break;
            case Act.FigureJudged a:
                json.WriteString("page", a.Page);
                json.WriteString("dimension", a.Dimension);
                StatusJson.Write(json, a.Status, units);
                break;
            case Act.FigureMeasured a:
                json.WriteString("page", a.Page);
                json.WriteString("dimension", a.Dimension);
                json.WritePropertyName("evidence");
                DimensionJson.WriteEvidence(json, a.Evidence, units);
                break;
            case Act.CarFitted a:
                json.WriteList("attributes", a.Attributes, t => AppliesToJson.WriteAttribute(json, t));
                break;
        }
    }

    public static Act? ReadBody(string word, Fields fields) =>
        word switch
        {
            "book-page-put" => fields.Group("page") is { } f && PageJson.Read(f) is { } page ? new Act.BookPagePut(page) : null,
            "book-page-removed" => fields.RequiredText("id") is { } id ? new Act.BookPageRemoved(id) : null,
            "figure-judged" => fields.RequiredText("page") is { } page && fields.RequiredText("dimension") is { } dimension
                ? new Act.FigureJudged(page, dimension, fields.Group("status") is { } f ? StatusJson.Read(f) : FigureStatus.AsPrinted)
                : null,
            "figure-measured" => fields.RequiredText("page") is { } page
            && fields.RequiredText("dimension") is { } dimension
            && fields.Group("evidence") is { } f
            && DimensionJson.ReadEvidence(f) is { } evidence
                ? new Act.FigureMeasured(page, dimension, evidence)
                : null,
            "car-fitted" => new Act.CarFitted(fields.List("attributes", p => AppliesToJson.ReadAttribute(fields.Item(p)))),
            _ => null,
        };
}
