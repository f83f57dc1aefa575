package loomwright.circuit.file;

import loomwright.circuit.Circuit;
import loomwright.circuit.DrilledPanel;
import loomwright.circuit.PartKind;
import loomwright.worked.ChoiceField;
import loomwright.worked.Field;
import loomwright.worked.Option;

/** The schema of a circuit file as the fields of the parts give it. */
final class SchemaText {
    private final StringBuilder text = new StringBuilder();

    private SchemaText() {}

    static String of() {
        SchemaText schema = new SchemaText();
        schema.text.append("{\n  \"$schema\": \"https://json-schema.org/draft/2020-12/schema\",\n")
                .append("  \"title\": \"Loomwright circuit, version 1\",\n")
                .append("  \"description\": \"A 12 V installation: its parts, the battery first, each after the part that feeds it. ")
                .append("Quantities are texts as they were typed, with their unit.\",\n")
                .append("  \"type\": \"object\",\n  \"additionalProperties\": false,\n")
                .append("  \"required\": [\"format\", \"version\", \"parts\"],\n  \"properties\": {\n")
                .append("    \"format\": {\"const\": \"loomwright-circuit\"},\n    \"version\": {\"const\": 1},\n")
                .append("    \"name\": {\"$ref\": \"#/$defs/name\"},\n")
                .append("    \"parts\": {\"type\": \"array\", \"minItems\": 1, \"maxItems\": ").append(Circuit.MOST_PARTS).append(", ")
                .append("\"prefixItems\": [{\"$ref\": \"#/$defs/supply\"}], \"items\": {\"oneOf\": [");
        String comma = "";
        for (PartKind kind : PartKind.values()) {
            if (kind != PartKind.SUPPLY) {
                schema.text.append(comma).append("{\"$ref\": \"#/$defs/").append(kind.key()).append("\"}");
                comma = ", ";
            }
        }
        schema.text.append("]}},\n    \"drilled-panel\": {\"$ref\": \"#/$defs/drilled-panel\"}\n  },\n  \"$defs\": {\n")
                .append("    \"id\": {\"type\": \"string\", \"pattern\": \"^[a-z][a-z0-9-]{0,39}$\"},\n")
                .append("    \"name\": {\"type\": \"string\", \"maxLength\": 80},\n")
                .append("    \"reading\": {\"title\": \"What a meter read behind the part with the loads on\", \"type\": \"string\", \"maxLength\": 40},\n")
                .append("    \"quantity\": {\"type\": \"string\", \"minLength\": 1, \"maxLength\": 60}");
        for (PartKind kind : PartKind.values()) {
            schema.kind(kind);
        }
        schema.text.append(",\n    \"drilled-panel\": {\n      \"title\": \"The panel the outlets go into\",\n      \"type\": \"object\",\n")
                .append("      \"additionalProperties\": false,\n      \"properties\": {");
        String between = "";
        for (Field field : DrilledPanel.FIELDS) {
            schema.field(field, between);
            between = ",";
        }
        schema.text.append("\n      }\n    }");
        return schema.text.append("\n  }\n}\n").toString();
    }

    private void kind(PartKind kind) {
        boolean supply = kind == PartKind.SUPPLY;
        text.append(",\n    \"").append(kind.key()).append("\": {\n      \"title\": \"").append(kind.label())
                .append("\",\n      \"type\": \"object\",\n      \"additionalProperties\": false,\n      \"required\": [\"id\", \"kind\"")
                .append(supply ? "" : ", \"fed-by\"").append("],\n      \"properties\": {\n        \"id\": {\"$ref\": \"#/$defs/id\"},\n")
                .append("        \"kind\": {\"const\": \"").append(kind.key()).append("\"},\n        \"name\": {\"$ref\": \"#/$defs/name\"}");
        if (!supply) {
            text.append(",\n        \"fed-by\": {\"$ref\": \"#/$defs/id\"}");
        }
        if (kind.isTriggered()) {
            text.append(",\n        \"triggered-from\": {\"$ref\": \"#/$defs/id\"}");
        }
        text.append(",\n        \"reading\": {\"$ref\": \"#/$defs/reading\"}");
        for (Field field : kind.fields()) {
            field(field, ",");
        }
        text.append("\n      }\n    }");
    }

    private void field(Field field, String before) {
        text.append(before).append("\n        \"").append(field.key()).append("\": {\"title\": \"").append(field.label()).append("\", ");
        // What a file leaves out means this. A change of it changes what old files mean.
        if (field.usual() != null && !field.usual().isEmpty()) {
            text.append("\"default\": \"").append(field.usual()).append("\", ");
        }
        if (field instanceof ChoiceField choice) {
            text.append("\"enum\": [");
            for (Option option : choice.options()) {
                text.append(option == choice.options().get(0) ? "" : ", ").append('"').append(option.key()).append('"');
            }
            text.append("]}");
        } else {
            text.append("\"$ref\": \"#/$defs/quantity\"}");
        }
    }
}
