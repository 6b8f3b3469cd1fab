#pragma once

#include <string>

namespace warmbench::tests {

/// A file with a content, in the folder for temporary files, that is gone with its owner.
class TemporaryFile {
public:
    explicit TemporaryFile(const std::string& content);
    TemporaryFile(const TemporaryFile&) = delete;
    TemporaryFile& operator=(const TemporaryFile&) = delete;
    ~TemporaryFile();
    [[nodiscard]] const std::string& name() const { return m_name; }

private:
    std::string m_name;
};

} // namespace warmbench::tests
