// Verbs run without any application or display; everything else opens the workstation.
#include "app/cli/command_line.h"
#include "app/window/workstation.h"

#include <QStringList>
#include <iostream>

int main(int argc, char** argv) {
    QStringList arguments;
    for (int i = 1; i < argc; ++i)
        arguments << QString::fromLocal8Bit(argv[i]);
    if (gauge::app::isVerb(arguments))
        return static_cast<int>(gauge::app::runVerb(arguments, std::cout, std::cerr));
    return gauge::app::runWorkstation(argc, argv);
}
