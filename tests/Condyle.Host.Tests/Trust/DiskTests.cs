using System.Diagnostics;
using Condyle.Runtime;
using Condyle.Runtime.Gltf.Writing;

namespace Condyle.Host.Tests.Trust;

/// <summary>A disk that is full and a folder that can't be written give one clear error, and nothing is left half-written.</summary>
public sealed class DiskTests : IDisposable
{
    private readonly TestProgram program = new(typeof(Hoist), typeof(HoistClips));

    public void Dispose() => program.Dispose();

    [SkippableFact]
    public void A_full_disk_is_one_clear_error_and_leaves_the_old_file()
    {
        using var disk = Disk.Of(program["disk"], "size=64k");
        program.Write("hoist.gltf", Hoist.Delivered);
        string[] bake = ["bake", "--clip", "unload", "--out", program["disk"]];
        Assert.Equal(0, program.Run(bake));
        var before = File.ReadAllBytes(program["disk/hoist.glb"]);
        Assert.Equal(2, program.Run([.. bake, "--fps", "1000"]));
        Assert.Matches(@"^error: .*hoist\.glb: it can't be written: .*(space|full).*\. Name a folder that you may write to, with room on its disk\.$", program.Error.Trim());
        Assert.Equal(["hoist.glb"], Directory.GetFiles(program["disk"]).Select(Path.GetFileName));
        Assert.Equal(before, File.ReadAllBytes(program["disk/hoist.glb"]));

        // A batch lists it and goes on.
        ClipFiles.Write(program, "long", 30, seconds: 1000);
        ClipFiles.Write(program, "short", 30);
        Assert.Equal(1, program.Run("bake", program["clips"], "--out", program["disk"]));
        Assert.Contains("1 baked, 0 up to date, 1 failed", program.Output, StringComparison.Ordinal);
        Assert.Matches(@"long\.glb: it can't be written", program.Output);
    }

    [SkippableFact]
    public void A_read_only_folder_is_one_clear_error()
    {
        using var disk = Disk.Of(program["disk"], "ro");
        program.Write("hoist.gltf", Hoist.Delivered);
        Assert.Equal(2, program.Run("bake", "--out", program["disk"]));
        Assert.Matches(@"^error: .*hoist\.glb: it can't be written: .*[Rr]ead-only.*\. Name a folder that you may write to, with room on its disk\.$", program.Error.Trim());
        Assert.Equal(2, program.Run("tree", "--rig", "Hoist", "--out", program["disk/hoist.svg"]));
        Assert.Contains("it can't be written", program.Error, StringComparison.Ordinal);
    }

    [SkippableFact]
    public void A_device_that_takes_nothing_is_one_clear_error()
    {
        Skip.IfNot(File.Exists("/dev/full"), "There is no device that is always full.");
        var problem = Assert.Throws<BadInputException>(() => AtomicFile.Write(program["out.glb"], _ =>
        {
            using var full = new FileStream("/dev/full", FileMode.Open, FileAccess.Write);
            full.Write(new byte[1 << 16]);
            full.Flush(flushToDisk: true);
        }));
        Assert.Contains("it can't be written: No space left on device", problem.Message, StringComparison.Ordinal);
        Assert.Empty(program.FileNames);
    }

    /// <summary>A small disk in memory; skipped where one may not be made.</summary>
    private sealed class Disk : IDisposable
    {
        private readonly string folder;

        private Disk(string folder) => this.folder = folder;

        public static Disk Of(string folder, string options)
        {
            Directory.CreateDirectory(folder);
            Skip.IfNot(OperatingSystem.IsLinux() && Run("mount", "-t", "tmpfs", "-o", options, "tmpfs", folder), "A small disk may not be mounted here.");
            return new Disk(folder);
        }

        public void Dispose() => Run("umount", folder);

        private static bool Run(string command, params string[] args)
        {
            try
            {
                using var process = Process.Start(new ProcessStartInfo(command, args) { RedirectStandardError = true, RedirectStandardOutput = true })!;
                process.WaitForExit();
                return process.ExitCode == 0;
            }
            catch (System.ComponentModel.Win32Exception)
            {
                return false;
            }
        }
    }
}
