#include "tests/support/temporary_file.h"

#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <stdexcept>

#include <unistd.h>

namespace warmbench::tests {

TemporaryFile::TemporaryFile(const std::string& content)
    : m_name((std::filesystem::temp_directory_path() / "warmbench-test-XXXXXX").string()) {
    const int made = ::mkstemp(m_name.data());
    if (made < 0) throw std::runtime_error("cannot make " + m_name);
    ::close(made);
    std::ofstream{m_name, std::ios::binary} << content;
}

TemporaryFile::~TemporaryFile() {
    ::unlink(m_name.c_str());
}

} // namespace warmbench::tests
