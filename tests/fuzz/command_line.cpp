// SPDX-License-Identifier: GPL-3.0-or-later
// Any lines as arguments, in a folder of its own that holds one small show: an exit status of 0 to 3 and, beyond 1, a
// word on standard error. Slashes are taken out, so that nothing is written elsewhere.
#include <QDir>
#include <QGuiApplication>
#include <QTemporaryDir>
#include <cstdint>
#include <cstdlib>
#include <fstream>
#include <sstream>

#include "app/command_line/run.h"
#include "core/file/write.h"

namespace {
void prepare() {
    static int count = 1;
    static char name[] = "howlmap", *names[] = {name, nullptr};
    qputenv("QT_QPA_PLATFORM", "offscreen");
    // Never deleted: what it holds is used by others until the process ends.
    [[maybe_unused]] static const auto* const application = new QGuiApplication(count, names);
    static QTemporaryDir folder;
    QDir::setCurrent(folder.path());
    howlmap::Show show;
    show.tolerance.draws = 1;
    std::ofstream("s.howlmap") << howlmap::write_show(show);
}
}  // namespace

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
    using namespace howlmap::app;
    static const bool prepared = (prepare(), true);
    (void)prepared;
    QString text = QString::fromUtf8(reinterpret_cast<const char*>(data),
                                     static_cast<qsizetype>(std::min<std::size_t>(size, 2000)));
    text.remove(u'/');
    const Request request = request_of(text.split(u'\n'));
    if (request.kind == Request::Kind::window) return 0;
    std::ostringstream out, err;
    Console console{out, err};
    const int status = run(request, console);
    if (status < 0 || status > 3 || (status > 1 && err.str().empty())) std::abort();
    return 0;
}
