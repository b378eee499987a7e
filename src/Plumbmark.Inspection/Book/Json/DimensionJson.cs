using System.Text.Json;
using Plumbmark.Engine.Lengths;
using Plumbmark.Inspection.Bench;
using Plumbmark.Inspection.Bench.Json;
using Plumbmark.Inspection.Car.Json;
using Plumbmark.Inspection.Language;

namespace Plumbmark.Inspection.Book.Json;

/// <summary>One figure of a book page in a file.</summary>
internal static class DimensionJson
{
    public static BookDimension? Read(Fields fields)
    {
        var id = fields.RequiredText("id");
        var subject = SubjectJson.Read(fields);
        var dimension = new BookDimension(id ?? "", subject ?? new BookSubject.Named(id ?? ""))
        {
            Value = ReadPrinted(fields, "value"),
            AlsoPrinted = ReadPrinted(fields, "also"),
            Tolerance = ToleranceJson.Read(fields),
            MustEqual = PartJson.Texts(fields, "mustEqual"),
            IsBothSides = fields.Truth("bothSides"),
            IsHanded = fields.Truth("handed"),
            AppliesTo = fields.Group("appliesTo") is { } applies ? AppliesToJson.Read(applies) : AppliesTo.EveryCar,
            Source = fields.Group("source") is { } source ? SourceJson.Read(source) : BookSource.Unknown,
            Status = fields.Group("status") is { } status ? StatusJson.Read(status) : FigureStatus.AsPrinted,
            Evidence = fields.List("evidence", p => ReadEvidence(fields.Item(p))),
            Note = fields.OptionalText("note"),
        };
        fields.RefuseOthers();
        if (subject is not null)
        {
            CheckQuantities(fields, dimension);
        }

        return id is null || subject is null ? null : dimension;
    }

    public static void Write(Utf8JsonWriter json, BookDimension dimension, LengthUnit units)
    {
        json.WriteStartObject();
        json.WriteString("id", dimension.Id);
        SubjectJson.Write(json, dimension.Subject);
        AmountPart.Write(json, "value", dimension.Value, units);
        AmountPart.Write(json, "also", dimension.AlsoPrinted, units);
        ToleranceJson.Write(json, dimension.Tolerance, units);
        json.WriteList("mustEqual", dimension.MustEqual, json.WriteStringValue);
        json.WriteWhenTrue("bothSides", dimension.IsBothSides);
        json.WriteWhenTrue("handed", dimension.IsHanded);
        if (!dimension.AppliesTo.IsEveryCar)
        {
            AppliesToJson.Write(json, dimension.AppliesTo);
        }

        SourceJson.Write(json, dimension.Source);
        StatusJson.Write(json, dimension.Status, units);
        json.WriteList("evidence", dimension.Evidence, e => WriteEvidence(json, e, units));
        json.WriteOptional("note", dimension.Note);
        json.WriteEndObject();
    }

    private static Amount? ReadPrinted(Fields fields, string name)
    {
        if (fields.Optional(name) is { Kind: JsonValueKind.String } part && ScannedText.Refusal(part.Text) is { } refusal)
        {
            fields.Faults.Add(part, refusal);
            return null;
        }

        return AmountPart.Optional(fields, name);
    }

    public static CarEvidence? ReadEvidence(Fields fields)
    {
        var car = fields.RequiredText("car");
        var value = AmountPart.Required(fields, "value");
        var note = fields.OptionalText("note");
        fields.RefuseOthers();
        return car is null || value is null ? null : new CarEvidence(car, value, note);
    }

    public static void WriteEvidence(Utf8JsonWriter json, CarEvidence evidence, LengthUnit units)
    {
        json.WriteStartObject();
        json.WriteString("car", evidence.Car);
        AmountPart.Write(json, "value", evidence.Value, units);
        json.WriteOptional("note", evidence.Note);
        json.WriteEndObject();
    }

    private static void CheckQuantities(Fields fields, BookDimension dimension)
    {
        var needed = dimension.Subject is BookSubject.Between or BookSubject.At ? Quantity.Length : dimension.Value?.Quantity;
        void Check(string name, Amount? amount, bool mayBeNegative)
        {
            if (amount is not null && (amount.Quantity != needed && needed is not null || (amount.Si < 0 && !mayBeNegative)))
            {
                fields.Faults.Add(
                    fields.Optional(name) ?? fields.Part,
                    amount.Quantity != needed && needed is not null
                        ? Language.Texts.Say("book.dimension-json.found-is-needed-here", AmountText.Write(amount), WordFor(needed.Value))
                        : Language.Texts.Say("book.dimension-json.found-a-length-between-two", AmountText.Write(amount))
                );
            }
        }

        var isDistance = dimension.Subject is BookSubject.Between { Sense: LengthSense.Plan or LengthSense.Direct or LengthSense.Unsaid };
        Check("value", dimension.Value, !isDistance);
        Check("also", dimension.AlsoPrinted, !isDistance);
        Check("tolerance", dimension.Tolerance?.Plus, true);
        Check("tolerance", dimension.Tolerance?.Minus, true);
        Check("status", (dimension.Status as FigureStatus.Corrected)?.Value, !isDistance);
    }

    private static string WordFor(Quantity quantity) =>
        quantity switch
        {
            Quantity.Length => Language.Texts.Say("book.dimension-json.a-length"),
            Quantity.Angle => Language.Texts.Say("book.dimension-json.an-angle"),
            _ => Language.Texts.Say("book.dimension-json.a-spring-rate"),
        };
}
