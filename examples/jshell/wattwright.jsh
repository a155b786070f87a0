import java.util.*
import org.wattwright.battery.*
import org.wattwright.charging.*
import org.wattwright.check.*
import org.wattwright.conductor.*
import org.wattwright.conversion.*
import org.wattwright.drive.*
import org.wattwright.installation.*
import org.wattwright.layout.*
import org.wattwright.profile.*
import org.wattwright.protection.*
import org.wattwright.thermal.*
import org.wattwright.units.*
import org.wattwright.vehicle.*
import org.wattwright.voltage.*
import static org.wattwright.units.Measures.*
import static org.wattwright.units.WorkshopUnits.*
void print(Object what) { System.out.println(what); }
