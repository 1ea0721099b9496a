// SPDX-License-Identifier: GPL-3.0-or-later
// Whether a document obeys a published schema (JSON Schema draft-07), as valijson sees it.
#pragma once
#include <filesystem>
#include <memory>
#include <nlohmann/json_fwd.hpp>
#include <string>

namespace howlmap::test {

class SchemaJudge {
  public:
    /// Throws std::exception where the file is not there or no schema.
    explicit SchemaJudge(const std::filesystem::path& schema);
    ~SchemaJudge();
    /// Empty when the document is valid, else the deepest complaint.
    std::string complaint(nlohmann::json document) const;

  private:
    struct Schema;
    std::unique_ptr<Schema> schema_;
};

}  // namespace howlmap::test
