#include "core/book/command.h"

namespace warmbench {

Command::Command(const Command& other) = default;
Command::Command(Command&& other) noexcept = default;
Command& Command::operator=(const Command& other) = default;
Command& Command::operator=(Command&& other) noexcept = default;
Command::~Command() = default;

} // namespace warmbench
