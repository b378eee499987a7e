namespace Plumbmark.Web.Server;

/// <summary>Names of the fields that every form carries.</summary>
internal static class FormFields
{
    /// <summary>Proves that the form came from a page of ours.</summary>
    public const string ForgeryToken = "token";

    /// <summary>Tells two copies of the same form apart: each time a form is shown it has another one.</summary>
    public const string FormId = "form";
}
