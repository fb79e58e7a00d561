using Condyle.Host.Reporting;
using Condyle.Runtime;
using Condyle.Runtime.Gltf;
using Condyle.Runtime.Profiles;

namespace Condyle.Host.Batch;

/// <summary>Each file of clips becomes what an engine profile writes.</summary>
internal sealed class ProfileTarget : IBakeTarget
{
    private readonly EngineProfile profile;
    private readonly string folder;
    private readonly ProfileWriter writer;

    /// <exception cref="BadInputException">The profile can't be.</exception>
    public ProfileTarget(CompiledRig rig, GltfFile delivered, EngineProfile profile, string folder)
    {
        (this.profile, this.folder) = (profile, folder);
        writer = new ProfileWriter(rig, delivered, profile);
        Notes = [.. writer.NotInSkeleton.Select(level => Say.NotInSkeleton(level.Level, level.Names))];
    }

    public object Settings => profile;

    public IReadOnlyList<string> Notes { get; }

    public IReadOnlyList<string> FilesFor(string name) => writer.FilesFor(name);

    public (IReadOnlyList<BakeReport> Reports, IReadOnlyList<string> Written) Bake(IReadOnlyList<Clip> clips, string name, CancellationToken cancellation)
    {
        var (_, reports) = writer.Write(clips, folder, name, cancellation: cancellation)!.Value;
        return (reports, [.. FilesFor(name).Select(file => Path.Combine(folder, file))]);
    }
}
