using Condyle.Analyzers.Skeletons;
using Microsoft.CodeAnalysis;

namespace Condyle.Analyzers.Tests.Skeletons;

public class CachingTests
{
    private static readonly Extra File = new("small.gltf", SmallFiles.Gltf("""{"name": "hook"}"""));

    [Fact]
    public void An_edit_elsewhere_reads_no_file_again()
    {
        var run = GeneratorRun.Of([File]).Again(driver => driver);

        Assert.All(run.Reasons(SkeletonGenerator.SourcesStep), reason => Assert.Equal(IncrementalStepRunReason.Cached, reason));
        Assert.All(run.Result.TrackedOutputSteps.SelectMany(step => step.Value).SelectMany(step => step.Outputs),
            output => Assert.Equal(IncrementalStepRunReason.Cached, output.Reason));
    }

    [Fact]
    public void Another_file_reads_only_that_one()
    {
        var run = GeneratorRun.Of([File]).Again(driver => driver.AddAdditionalTexts([new Extra("second.gltf", SmallFiles.Gltf("""{"name": "hook"}"""))]));

        Assert.Equal([IncrementalStepRunReason.New, IncrementalStepRunReason.Cached], run.Reasons(SkeletonGenerator.SourcesStep).Order());
        Assert.Equal(2, run.Result.GeneratedSources.Length);
    }

    [Fact]
    public void A_changed_mesh_leaves_the_class_as_it_was()
    {
        var changed = new Extra("small.gltf", SmallFiles.Gltf("""{"name": "hook"}""").Replace("\"asset\"", "\"meshes\": [], \"asset\"", StringComparison.Ordinal));
        var run = GeneratorRun.Of([File]).Again(driver => driver.ReplaceAdditionalText(File, changed));

        Assert.Equal([IncrementalStepRunReason.Unchanged], run.Reasons(SkeletonGenerator.SourcesStep));
    }

    [Fact]
    public void A_changed_joint_changes_the_class()
    {
        var run = GeneratorRun.Of([File]).Again(driver => driver.ReplaceAdditionalText(File, new Extra("small.gltf", SmallFiles.Gltf("""{"name": "sling"}"""))));

        Assert.Equal([IncrementalStepRunReason.Modified], run.Reasons(SkeletonGenerator.SourcesStep));
        Assert.Contains("Sling", run.Code);
    }
}
