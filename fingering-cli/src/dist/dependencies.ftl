| Library | Version | Licence |
|---|---|---|
<#list dependencyMap as dependency>
<#if dependency.key.groupId != "fingering">
| `${dependency.key.groupId}:${dependency.key.artifactId}` | ${dependency.key.version} | ${dependency.value?join(" or ")} |
</#if>
</#list>
