using Plumbmark.Engine.Lengths;
using static Plumbmark.Inspection.Language.Texts;

namespace Plumbmark.Web.Server;

/// <summary>Takes typed values out of a form; what is not understood goes to the faults.</summary>
public static class FormReading
{
    /// <summary>A length; null when the field is empty or wrong.</summary>
    /// <param name="request">The request with the form.</param>
    /// <param name="field">The field.</param>
    /// <param name="units">The unit of a number without one.</param>
    /// <param name="faults">Where a fault is recorded.</param>
    /// <param name="sign">Whether a minus has a meaning here.</param>
    public static Length? OptionalLength(
        this PageRequest request,
        string field,
        LengthUnit units,
        FieldFaults faults,
        LengthSign sign = LengthSign.NeverNegative
    ) => request.Field(field).Length == 0 ? null : request.RequiredLength(field, units, faults, sign);

    /// <summary>A length that must be given; null when it is wrong or missing.</summary>
    /// <param name="request">The request with the form.</param>
    /// <param name="field">The field.</param>
    /// <param name="units">The unit of a number without one.</param>
    /// <param name="faults">Where a fault is recorded.</param>
    /// <param name="sign">Whether a minus has a meaning here.</param>
    public static Length? RequiredLength(
        this PageRequest request,
        string field,
        LengthUnit units,
        FieldFaults faults,
        LengthSign sign = LengthSign.NeverNegative
    ) =>
        LengthText
            .Read(request.Field(field), units, sign)
            .Match<Length?>(
                length => length,
                refused =>
                {
                    faults.Add(field, refused.Sentence);
                    return null;
                }
            );

    /// <summary>A text that must be given and is not longer than allowed; empty when it is wrong.</summary>
    /// <param name="request">The request with the form.</param>
    /// <param name="field">The field.</param>
    /// <param name="what">What the text is, for the sentence: "a name".</param>
    /// <param name="faults">Where a fault is recorded.</param>
    /// <param name="most">The most characters.</param>
    public static string RequiredText(this PageRequest request, string field, string what, FieldFaults faults, int most = 200)
    {
        var text = request.OptionalText(field, faults, most) ?? "";
        if (text.Length == 0)
        {
            faults.Add(field, Say("page.form.nothing-is-written-here", what));
        }

        return text;
    }

    /// <summary>A text that may be left out: null then.</summary>
    /// <param name="request">The request with the form.</param>
    /// <param name="field">The field.</param>
    /// <param name="faults">Where a fault is recorded.</param>
    /// <param name="most">The most characters.</param>
    public static string? OptionalText(this PageRequest request, string field, FieldFaults faults, int most = 200)
    {
        var text = request.Field(field);
        if (text.Length > most)
        {
            faults.Add(field, Say("page.form.this-is-characters-long", text.Length, most));
        }

        return text.Length == 0 ? null : text;
    }
}
