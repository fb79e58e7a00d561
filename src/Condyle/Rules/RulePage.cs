using System.Reflection;

namespace Condyle.Rules;

/// <summary>The pages that lie beside the rules, and go along in the assembly.</summary>
internal static class RulePage
{
    public static string Of(string id)
    {
        using var stream = typeof(RulePage).GetTypeInfo().Assembly.GetManifestResourceStream(id + ".md")
            ?? throw new InvalidOperationException($"{id} has no page.");
        using var reader = new StreamReader(stream);
        return reader.ReadToEnd();
    }

    /// <summary>The first paragraph of a page: what it is about.</summary>
    public static string SummaryOf(string id) => Of(id).Split(["\n\n"], 3, StringSplitOptions.None)[1];
}
