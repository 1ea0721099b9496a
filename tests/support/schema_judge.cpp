// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/support/schema_judge.h"

#define VALIJSON_USE_EXCEPTIONS 1
#include <fstream>
#include <valijson/adapters/nlohmann_json_adapter.hpp>
#include <valijson/schema.hpp>
#include <valijson/schema_parser.hpp>
#include <valijson/validator.hpp>

namespace howlmap::test {

struct SchemaJudge::Schema {
    valijson::Schema of;
};

SchemaJudge::SchemaJudge(const std::filesystem::path& schema) : schema_(std::make_unique<Schema>()) {
    std::ifstream in(schema);
    const auto text = nlohmann::json::parse(in);
    valijson::SchemaParser parser(valijson::SchemaParser::kDraft7);
    parser.populateSchema(valijson::adapters::NlohmannJsonAdapter(text), schema_->of);
}

SchemaJudge::~SchemaJudge() = default;

std::string SchemaJudge::complaint(nlohmann::json document) const {
    // The validator takes whole numbers for 64 bits with a sign; a seed has none.
    if (auto seed = nlohmann::json::json_pointer("/tolerance/seed");
        document.contains(seed) && document[seed].is_number_unsigned())
        document[seed] = document[seed].get<std::uint64_t>() >> 1;
    valijson::Validator validator;
    valijson::ValidationResults results;
    if (validator.validate(schema_->of, valijson::adapters::NlohmannJsonAdapter(document), &results)) return {};
    valijson::ValidationResults::Error error;
    std::string deepest = "invalid";
    std::size_t depth = 0;
    while (results.popError(error)) {
        if (error.context.size() < depth) continue;
        depth = error.context.size();
        deepest.clear();
        for (const std::string& step : error.context) deepest += step;
        deepest += ": " + error.description;
    }
    return deepest;
}

}  // namespace howlmap::test
