#include "app/window/open_shared.h"

#include "app/storage/shared_address.h"

namespace warmbench::app {

Result<std::unique_ptr<BookFile>> openBookWith(PasswordKeeper& keys, const std::string& name, OpenMode mode) {
    auto file = BookFile::open(name, mode);
    if (file) (*file)->keepBackups(true);
    if (!isShared(name)) return file;
    auto address = SharedAddress::read(name);
    if (!address) return address.refusal();
    if (!address->password.empty()) {
        // Without a key store it is asked for again next time; the book is open all the same.
        if (file) [[maybe_unused]]
            const Outcome kept = keys.keep(address->shown(), address->password);
        return file;
    }
    if (file || file.refusal().what.text().find("password") == std::string::npos) return file;
    address->password = keys.find(address->shown());
    return address->password.empty() ? std::move(file) : BookFile::open(address->withPassword(), mode);
}

} // namespace warmbench::app
