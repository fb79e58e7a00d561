namespace Condyle.Analyzers.Skeletons;

/// <summary>The code made of one file, or the reason why there is none. Compares by value, so an unchanged result stops the pipeline.</summary>
internal sealed record SkeletonSource(string HintName, string ClassName, string FilePath, string Code, SkeletonProblem? Problem)
{
    public static SkeletonSource Make(SkeletonRequest request, CancellationToken cancel)
    {
        var (code, problem) = Read(request, cancel);
        return new SkeletonSource(request.HintName, request.ClassName, request.File.Path, code, problem);
    }

    public SkeletonProblem NameClash() => SkeletonProblem.AtStart(FilePath,
        $"{Path.GetFileName(FilePath)}: another skeleton file also makes the class '{ClassName}'. Give one of them another by ClassName=\"...\" on its CondyleSkeleton");

    private static (string Code, SkeletonProblem? Problem) Read(SkeletonRequest request, CancellationToken cancel)
    {
        var path = request.File.Path;
        if (!Identifiers.IsValid(request.ClassName))
            return ("", SkeletonProblem.AtStart(path, $"{request.FileName}: its ClassName is '{request.ClassName}', which can't be the name of a class. Give a C# identifier"));
        if (!path.EndsWith(".gltf", StringComparison.OrdinalIgnoreCase))
            return ("", SkeletonProblem.AtStart(path, $"{request.FileName}: only text .gltf files can be read here. {SkeletonProblem.WriteGltf}"));
        if (request.File.GetText(cancel) is not { } text)
            return ("", SkeletonProblem.AtStart(path, $"{request.FileName}: the file can't be opened. Check that it is there and is text"));

        var utf8 = new Utf8File(text);
        try
        {
            var joints = SkeletonReader.Read(utf8, request.Naming, cancel);
            return (SkeletonWriter.Write(request, joints), null);
        }
        catch (SkeletonFileException wrong)
        {
            return ("", SkeletonProblem.At(path, text, utf8.OffsetOf(wrong), $"{request.FileName}: {wrong.Message}"));
        }
    }
}
