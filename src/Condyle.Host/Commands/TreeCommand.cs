using Condyle.Host.Catalogue;
using Condyle.Host.Reporting;
using Condyle.Host.Sheets;
using Condyle.Runtime;
using Condyle.Runtime.Gltf.Writing;

namespace Condyle.Host.Commands;

/// <summary>Shows rigs as trees, with what moves what.</summary>
internal sealed class TreeCommand(Surroundings surroundings)
{
    public int Run(string? rig, string? output, bool json)
    {
        List<RigSheet> sheets = [.. RigCatalogue.Of(surroundings).Choose(rig).Select(entry => SheetWriter.Of(entry.Examine()))];
        if (output is not null)
            Write(sheets is [var only] ? only : throw new BadInputException("--out", $"one rig goes into a file, and there are {sheets.Count}", "Say which with --rig"), output, json);
        else if (json)
            JsonReport.Write(surroundings.Output, new { rigs = sheets });
        else
            Show(sheets);
        return ExitCode.Ok;
    }

    private void Show(List<RigSheet> sheets)
    {
        foreach (var sheet in sheets)
        {
            surroundings.Tell(sheet.Rig);
            surroundings.Output.Write(SheetText.Of(sheet));
        }
    }

    private void Write(RigSheet sheet, string output, bool json)
    {
        switch (Path.GetExtension(output).ToLowerInvariant())
        {
            case ".json":
                SheetFile.Write(output, sheet);
                break;
            case ".svg":
                AtomicFile.Write(output, SheetPicture.Of(sheet));
                break;
            case ".txt":
                AtomicFile.Write(output, $"{sheet.Rig}\n{SheetText.Of(sheet)}");
                break;
            default:
                throw new BadInputException(output, "it isn't known what to write there", "Name the file .svg (a picture), .txt (lines) or .json (a model file for compare)");
        }

        if (json)
            JsonReport.Write(surroundings.Output, new { rig = sheet.Rig, file = output });
        else
            surroundings.Tell($"wrote {output}");
    }
}
