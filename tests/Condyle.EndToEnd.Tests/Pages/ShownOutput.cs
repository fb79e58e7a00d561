using System.Text.RegularExpressions;

namespace Condyle.EndToEnd.Tests.Pages;

/// <summary>
/// What a page shows of what a command prints. <c>…</c> stands for whatever is left out. Figures that are measured, in mm, degrees, kB and MB, and moments
/// in hundredths of a second may differ from machine to machine, in their last digits or where two moments are as bad, so it is enough that there is one.
/// </summary>
internal static partial class ShownOutput
{
    public static void IsIn(string printed, string shown)
    {
        var pattern = Measured().Replace(Regex.Escape(shown.Trim()), @"[0-9.]+").Replace("…", ".*", StringComparison.Ordinal);
        Assert.True(Regex.IsMatch(printed.ReplaceLineEndings("\n").Trim(), $"^{pattern}$", RegexOptions.Singleline), $"The page shows\n{shown}\nand printed is\n{printed}");
    }

    [GeneratedRegex(@"[0-9]+(\\\.[0-9]+)?(?=(\\ (mm|kB|MB))|°)|[0-9]+\\\.[0-9]{2}(?=\\ s)")]
    private static partial Regex Measured();
}
