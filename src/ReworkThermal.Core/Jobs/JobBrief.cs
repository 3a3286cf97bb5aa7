namespace ReworkThermal.Core.Jobs;

/// <summary>What a job is about. Profiles are named, not copied: the report prints the fingerprint of the files it used.</summary>
/// <param name="Label">Free text by which the technician knows the job, 1 to 200 characters.</param>
/// <param name="Board">Name of the board profile, or null while unknown.</param>
/// <param name="Joint">Name of the joint profile, or null while unknown.</param>
/// <param name="Connector">Name of the connector profile, or null when there is none.</param>
/// <param name="BaseSolder">Designation of the solder that arrived in the joints, or null while unknown.</param>
/// <param name="LeadFreeOnly">Whether alloys with lead are ruled out for this job.</param>
public sealed record JobBrief(
    string Label,
    string? Board = null,
    string? Joint = null,
    string? Connector = null,
    string? BaseSolder = null,
    bool LeadFreeOnly = false);
